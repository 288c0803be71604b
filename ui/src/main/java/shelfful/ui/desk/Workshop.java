package shelfful.ui.desk;

import java.io.File;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import shelfful.app.OpenAList;
import shelfful.load.LoadRequest;
import shelfful.ui.batches.BatchListViewModel;
import shelfful.ui.batches.BatchPane;
import shelfful.ui.batches.ColumnMemory;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsPane;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.studio.Manner;
import shelfful.ui.studio.StudioPane;
import shelfful.ui.studio.StudioViewModel;
import shelfful.ui.words.Words;

/** The windows beside the desk: the studio, the batch list, the settings. Each is opened once. */
final class Workshop {
  private static final double WIDTH = 1080;
  private static final double HEIGHT = 760;

  private final Words words;
  private final SettingsViewModel settings;
  private final DeskViewModel desk;
  private final Leaving leaving;
  private final Leaving.Document studioFile;
  private final Leaving.Document listFile;
  private final StudioViewModel studio;
  private final BatchListViewModel batches;
  private final Stage owner;
  private final ColumnMemory memory;
  private final LastStudio last;
  private final Map<String, Stage> open = new HashMap<>();

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
    this.owner = owner;
    this.settings = around.settings();
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
    return ask("studio.title", "tools.studioKind", true, "*.json");
  }

  private Optional<Path> whereList() {
    return ask("batches.title", "tools.listKind", true, "*.csv", "*.json");
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
    return new Menu(
        words.of("tools.menu"),
        null,
        item("tools.studio", this::showStudio),
        item("tools.batches", this::showBatches),
        item("tools.settings", this::showSettings));
  }

  private MenuItem item(String key, Runnable action) {
    MenuItem item = new MenuItem(words.of(key));
    item.setOnAction(event -> action.run());
    return item;
  }

  private void showStudio() {
    show(
        "studio.title",
        () ->
            new StudioPane(
                words,
                studio,
                new StudioPane.Files(
                    () ->
                        leaving.mayLeave(studioFile)
                            ? ask("studio.title", "tools.studioKind", false, "*.json")
                            : Optional.empty(),
                    this::whereStudio)));
  }

  /** Shows the batch list with what is on the clipboard, to be looked at before it is taken. */
  void paste() {
    showBatches();
    if (open.get("batches.title").getScene().getRoot() instanceof BatchPane pane) {
      pane.paste();
    }
  }

  private void showBatches() {
    show(
        "batches.title",
        () ->
            new BatchPane(
                words,
                batches,
                new BatchPane.Surroundings(
                    () ->
                        leaving.mayLeave(listFile)
                            ? ask("batches.title", "tools.listKind", false, "*.csv", "*.json")
                            : Optional.empty(),
                    this::whereList,
                    BatchPane::systemClipboard,
                    memory,
                    this::plan)));
  }

  private void showSettings() {
    show(
        "settings.title",
        () -> {
          ScrollPane all = new ScrollPane(new SettingsPane(words, settings));
          all.setFitToWidth(true);
          return all;
        });
  }

  /** The window of this title, if it was ever opened. */
  Optional<Stage> window(String key) {
    return Optional.ofNullable(open.get(key));
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

  private void show(String title, Supplier<Parent> content) {
    Stage stage =
        open.computeIfAbsent(
            title,
            same -> {
              Parent pane = content.get();
              Look.follow(pane, settings.settings());
              Stage fresh = new Stage();
              fresh.initOwner(owner);
              fresh.setTitle(words.of(title));
              fresh.setScene(new Scene(pane, WIDTH, HEIGHT));
              return fresh;
            });
    stage.show();
    stage.toFront();
  }

  private Optional<Path> ask(String title, String kind, boolean toSave, String... endings) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(words.of(title));
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(words.of(kind), endings));
    File file =
        toSave ? chooser.showSaveDialog(open.get(title)) : chooser.showOpenDialog(open.get(title));
    return Optional.ofNullable(file).map(File::toPath);
  }
}
