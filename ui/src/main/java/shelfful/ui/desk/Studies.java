package shelfful.ui.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.SeparatorMenuItem;
import javafx.stage.Stage;
import shelfful.app.FiringFolder;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;
import shelfful.record.UnpackedFiring;
import shelfful.studio.Studio;
import shelfful.ui.batches.BatchPane;
import shelfful.ui.figures.FiguresPane;
import shelfful.ui.figures.FiguresViewModel;
import shelfful.ui.firings.FiringBook;
import shelfful.ui.firings.FiringsPane;
import shelfful.ui.firings.UnpackingViewModel;
import shelfful.ui.learned.LearnedPane;
import shelfful.ui.learned.LearnedViewModel;
import shelfful.ui.learned.StudioDoor;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.MenuItems;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.studio.OutsideChange;
import shelfful.ui.studio.StudioViewModel;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.why.RemedyCards;
import shelfful.ui.why.WhyPane;
import shelfful.ui.why.WhyViewModel;
import shelfful.ui.words.Words;
import shelfful.ui.worth.WorthPane;
import shelfful.ui.worth.WorthViewModel;

/**
 * The windows that ask and look back: why pieces wait, what to buy, the firings, what they taught,
 * and their figures.
 */
final class Studies {
  private final Words words;
  private final DeskViewModel desk;
  private final Around around;
  private final SideWindows windows;
  private final FiringsPlace place;
  private final FiringBook book;
  private final Remedies remedies;
  private final WorthViewModel worth;
  private final UnpackingViewModel unpacking;
  private final LearnedViewModel learned;
  private final FiguresViewModel figures;
  private boolean isRead;

  Studies(Words words, DeskViewModel desk, Around around) {
    this.words = words;
    this.desk = desk;
    this.around = around;
    TaskRunner tasks = around.tasks();
    windows = new SideWindows(words, around.settings(), around.owner(), Optional.of("studies.css"));
    place = new FiringsPlace(around.folder());
    book = new FiringBook(words, tasks, new FiringFolder(place.folder()), LocalDate::now);
    remedies = new Remedies(words, tasks, desk);
    worth = new WorthViewModel(words, tasks, around.studio().studio()::get, LocalDate::now);
    unpacking = new UnpackingViewModel(words, tasks, book);
    StudioViewModel studio = around.studio();
    Door door = new Door(studio, studio.studio().when(windows.shown("learned.title")));
    learned = new LearnedViewModel(words, tasks, firingsFor("learned.title"), door);
    figures = new FiguresViewModel(words, firingsFor("figures.title"));
    desk.shown().addListener((property, was, is) -> lookWhy());
    desk.planning().addListener((property, was, is) -> lookWhy());
  }

  /**
   * What the windows ask of the program.
   *
   * @param studio that suggestions are accepted into
   * @param owner the desk's own window, with which these are closed
   * @param folder of the settings
   */
  record Around(
      SettingsViewModel settings,
      StudioViewModel studio,
      TaskRunner tasks,
      Stage owner,
      Path folder) {}

  private record Door(StudioViewModel model, ObservableValue<Studio> studio) implements StudioDoor {
    @Override
    public Optional<String> change(String name, UnaryOperator<Studio> change) {
      return new OutsideChange(model).take(name, change);
    }
  }

  /** The firings as long as a window is open; it catches up when it is opened again. */
  private ObservableValue<List<UnpackedFiring>> firingsFor(String title) {
    return book.firings().when(windows.shown(title));
  }

  /** The menu that opens the windows. */
  Menu menu() {
    MenuItems items = new MenuItems(words);
    return new Menu(
        words.of("studies.menu"),
        null,
        items.item("studies.why", this::showWhy),
        items.item("studies.worth", this::showWorth),
        new SeparatorMenuItem(),
        items.item("studies.record", this::record),
        items.item("studies.firings", this::showFirings),
        items.item("studies.learned", this::showLearned),
        items.item("studies.figures", this::showFigures),
        new SeparatorMenuItem(),
        items.item("studies.madeUp", this::showMadeUp),
        items.item("studies.own", this::showOwn));
  }

  /** The window of this title, if it was ever opened. */
  Optional<Stage> window(String key) {
    return windows.of(key);
  }

  private Decimals decimals() {
    return new Decimals(around.settings().settings().get().numbers());
  }

  private LengthUnit unit() {
    return around.settings().settings().get().unit();
  }

  private Optional<InspectedLoad> load() {
    return desk.shown().get().flatMap(ShownLoad::inspected);
  }

  /** Why pieces wait is looked at only while its window is open and no better load is coming. */
  private void lookWhy() {
    if (windows.isOpen("why.title") && !desk.planning().get()) {
      remedies.look();
    }
  }

  void showWhy() {
    WhyViewModel why = remedies.why();
    windows.show(
        "why.title",
        () ->
            new WhyPane(words, why, new RemedyCards(words, why, this::unit), Room.of(words, desk)));
    lookWhy();
  }

  private void showWorth() {
    windows.show(
        "worth.title",
        () ->
            new WorthPane(
                words,
                worth,
                () -> windows.ask("worth.title", "tools.listKind", "*.csv", "*.json"),
                this::decimals));
    if (worth.lists().isEmpty()) {
      load().ifPresent(one -> worth.add(words.of("worth.onDesk"), one.load().request()));
    }
  }

  /** The record that is begun comes with every other firing; they are not read besides. */
  private void record() {
    Optional<InspectedLoad> fired = load();
    isRead = isRead || fired.isPresent();
    showFirings();
    fired.ifPresentOrElse(book::begin, () -> book.tell("book.noLoad"));
  }

  void showFirings() {
    readOnce();
    windows.show(
        "firings.title",
        () ->
            new FiringsPane(
                words,
                book,
                unpacking,
                new FiringsPane.Doors(
                    this::record,
                    this::otherFolder,
                    () -> windows.ask("firings.title", "firings.noteKind", "*.txt"),
                    BatchPane::systemClipboard)));
  }

  private Optional<Path> otherFolder() {
    Optional<Path> folder = windows.askFolder("firings.title");
    folder.ifPresent(place::note);
    return folder;
  }

  void showLearned() {
    readOnce();
    windows.show(
        "learned.title", () -> new LearnedPane(words, learned, book.madeUp(), this::decimals));
  }

  void showFigures() {
    readOnce();
    windows.show(
        "figures.title",
        () ->
            new FiguresPane(
                words,
                figures,
                book.madeUp(),
                () -> windows.askWhere("figures.title", "figures.kind", "*.csv"),
                this::decimals));
  }

  private void readOnce() {
    if (!isRead) {
      isRead = true;
      book.read();
    }
  }

  /** The year of the invented pottery, which no file holds. */
  void showMadeUp() {
    isRead = true;
    book.showMadeUp(Demo.studio());
    showLearned();
    showFigures();
    showFirings();
  }

  private void showOwn() {
    isRead = true;
    book.read();
    showFirings();
  }
}
