package shelfful.ui.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javafx.scene.control.Menu;
import javafx.scene.control.ScrollPane;
import javafx.stage.Stage;
import shelfful.app.OpenAList;
import shelfful.load.LoadRequest;
import shelfful.ui.batches.BatchListViewModel;
import shelfful.ui.batches.BatchPane;
import shelfful.ui.batches.ColumnMemory;
import shelfful.ui.look.MenuItems;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsPane;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.studio.Manner;
import shelfful.ui.studio.StudioPane;
import shelfful.ui.studio.StudioViewModel;
import shelfful.ui.words.Words;

/** The windows beside the desk: the studio, the batch list, the settings. Each is opened once. */
final class Workshop {
  private final Words words;
  private final SettingsViewModel settings;
  private final DeskViewModel desk;
  private final Leaving leaving;
  private final Leaving.Document studioFile;
  private final Leaving.Document listFile;
  private final StudioViewModel studio;
  private final BatchListViewModel batches;
  private final SideWindows windows;
  private final ColumnMemory memory;
  private final LastStudio last;

  /**
   * Begins with the studio that was open last, or that of the demo, and an empty list.
   *
   * @param around what the windows ask of the program
   * @param owner the desk's own window, with which these are closed
   */
  Workshop(Words words, DeskViewModel desk, Around around, Stage owner) {
    this.memory = ColumnMemory.in(around.folder());
    this.last = new LastStudio(around.folder());
    this.words = words;
    this.settings = around.settings();
    this.windows = new SideWindows(words, settings, owner, Optional.empty());
    this.leaving = around.leaving();
    this.desk = desk;
    studio = new StudioViewModel(manner(settings.settings().get()), Demo.studio(), desk.steps());
    batches = new BatchListViewModel(words, studio.studio().get(), desk.steps());
    studioFile = studioFile();
    listFile = listFile();
    leaving.watch(studioFile);
    leaving.watch(listFile);
    last.file().ifPresent(studio::open);
    batches.use(studio.studio().get());
    studio.studio().addListener((property, was, is) -> batches.use(is));
    studio.unsaved().addListener((property, was, is) -> studio.file().ifPresent(last::note));
    settings.settings().addListener((property, was, is) -> follow(is));
    follow(settings.settings().get());
  }

  /**
   * What the windows ask of the program.
   *
   * @param leaving asks before unsaved work is left behind
   * @param folder of the settings, where it is noted what was open and what columns were taken for
   */
  record Around(SettingsViewModel settings, Leaving leaving, Path folder) {}

  /** The studio that is edited here. */
  StudioViewModel studio() {
    return studio;
  }

  private Leaving.Document studioFile() {
    return new Leaving.Document(
        words.of("leave.studio"),
        studio.unsaved()::get,
        () -> {
          studio.file().or(this::whereStudio).ifPresent(studio::save);
          return !studio.unsaved().get();
        },
        () -> {});
  }

  private Leaving.Document listFile() {
    return new Leaving.Document(
        words.of("leave.list"),
        batches.unsaved()::get,
        () -> {
          batches.file().or(this::whereList).ifPresent(batches::save);
          return !batches.unsaved().get();
        },
        () -> {});
  }

  private Optional<Path> whereStudio() {
    return windows.askWhere("studio.title", "tools.studioKind", "*.json");
  }

  private Optional<Path> whereList() {
    return windows.askWhere("batches.title", "tools.listKind", "*.csv", "*.json");
  }

  private Manner manner(Settings now) {
    return new Manner(words, now.unit(), now.numbers());
  }

  private void follow(Settings now) {
    studio.use(manner(now));
    desk.see(new Sight(now.paper(), Optional.of(now.unit())));
  }

  /** The menu that opens the windows. */
  Menu menu() {
    MenuItems items = new MenuItems(words);
    return new Menu(
        words.of("tools.menu"),
        null,
        items.item("tools.studio", this::showStudio),
        items.item("tools.batches", this::showBatches),
        items.item("tools.settings", this::showSettings));
  }

  private void showStudio() {
    windows.show(
        "studio.title",
        () ->
            new StudioPane(
                words,
                studio,
                new StudioPane.Files(
                    () ->
                        leaving.mayLeave(studioFile)
                            ? windows.ask("studio.title", "tools.studioKind", "*.json")
                            : Optional.empty(),
                    this::whereStudio)));
  }

  /** Shows the batch list with what is on the clipboard, to be looked at before it is taken. */
  void paste() {
    showBatches();
    if (windows.of("batches.title").orElseThrow().getScene().getRoot() instanceof BatchPane pane) {
      pane.paste();
    }
  }

  private void showBatches() {
    windows.show(
        "batches.title",
        () ->
            new BatchPane(
                words,
                batches,
                new BatchPane.Surroundings(
                    () ->
                        leaving.mayLeave(listFile)
                            ? windows.ask("batches.title", "tools.listKind", "*.csv", "*.json")
                            : Optional.empty(),
                    this::whereList,
                    BatchPane::systemClipboard,
                    memory,
                    this::plan)));
  }

  private void showSettings() {
    windows.show(
        "settings.title",
        () -> {
          ScrollPane all = new ScrollPane(new SettingsPane(words, settings));
          all.setFitToWidth(true);
          return all;
        });
  }

  /** The window of this title, if it was ever opened. */
  Optional<Stage> window(String key) {
    return windows.of(key);
  }

  private void plan() {
    OpenAList.request(studio.studio().get(), batches.batches(), LocalDate.now())
        .ifPresentOrElse(this::plan, () -> batches.tell("batches.nothingToFire"));
  }

  /** What is still the same work is one more step; other work takes the place of the plan. */
  private void plan(LoadRequest request) {
    if (desk.isOnDesk(request)) {
      desk.planChanged(request);
    } else {
      leaving.plan(() -> desk.plan(request));
    }
  }
}
