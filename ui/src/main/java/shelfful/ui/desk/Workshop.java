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
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import shelfful.app.OpenAList;
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
  private final StudioViewModel studio;
  private final BatchListViewModel batches;
  private final Stage owner;
  private final ColumnMemory memory;
  private final LastStudio last;
  private final Map<String, Stage> open = new HashMap<>();

  /**
   * Begins with the studio that was open last, or that of the demo, and an empty list.
   *
   * @param folder of the settings, where it is noted what was open and what columns were taken for
   * @param owner the desk's own window, with which these are closed
   */
  Workshop(Words words, SettingsViewModel settings, DeskViewModel desk, Stage owner, Path folder) {
    this.memory = ColumnMemory.in(folder);
    this.last = new LastStudio(folder);
    this.words = words;
    this.owner = owner;
    this.settings = settings;
    this.desk = desk;
    studio = new StudioViewModel(manner(settings.settings().get()), Demo.studio(), edit -> {});
    batches = new BatchListViewModel(words, studio.studio().get(), edit -> {});
    last.file().ifPresent(studio::open);
    batches.use(studio.studio().get());
    studio.studio().addListener((property, was, is) -> batches.use(is));
    studio.unsaved().addListener((property, was, is) -> studio.file().ifPresent(last::note));
    settings.settings().addListener((property, was, is) -> follow(is));
    follow(settings.settings().get());
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
                    () -> ask("studio.title", "tools.studioKind", false, "*.json"),
                    () -> ask("studio.title", "tools.studioKind", true, "*.json"))));
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
                    () -> ask("batches.title", "tools.listKind", false, "*.csv", "*.json"),
                    () -> ask("batches.title", "tools.listKind", true, "*.csv", "*.json"),
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

  /** Asks before changes that no file holds are lost; true when there are none. */
  boolean mayClose() {
    if (!studio.unsaved().get() && !batches.unsaved().get()) {
      return true;
    }
    ButtonType stay = new ButtonType(words.of("tools.stay"), ButtonBar.ButtonData.CANCEL_CLOSE);
    ButtonType leave = new ButtonType(words.of("tools.leave"), ButtonBar.ButtonData.OK_DONE);
    Alert question = new Alert(Alert.AlertType.NONE, words.of("tools.unsaved"), leave, stay);
    question.initOwner(owner);
    question.setTitle(words.of("window.title"));
    Look.dress(question.getDialogPane(), settings.settings().get());
    return question.showAndWait().filter(answer -> answer == leave).isPresent();
  }

  /** The window of this title, if it was ever opened. */
  Optional<Stage> window(String key) {
    return Optional.ofNullable(open.get(key));
  }

  private void plan() {
    OpenAList.request(studio.studio().get(), batches.batches(), LocalDate.now())
        .ifPresentOrElse(desk::plan, () -> batches.tell("batches.nothingToFire"));
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
