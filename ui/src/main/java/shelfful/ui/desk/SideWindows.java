package shelfful.ui.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;
import shelfful.ui.look.FileEnding;
import shelfful.ui.look.Look;
import shelfful.ui.look.ReplaceQuestion;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.words.Words;

/** Windows beside the desk, by the keys of their titles; each is made once, and asks for files. */
final class SideWindows {
  private static final double WIDTH = 1180;
  private static final double HEIGHT = 780;

  private final Words words;
  private final SettingsViewModel settings;
  private final Stage owner;
  private final Optional<String> sheet;
  private final Map<String, Stage> made = new HashMap<>();
  private final Map<String, SimpleBooleanProperty> shown = new HashMap<>();

  /**
   * None is made yet.
   *
   * @param sheet what else they are styled by, besides the look
   */
  SideWindows(Words words, SettingsViewModel settings, Stage owner, Optional<String> sheet) {
    this.sheet = sheet;
    this.words = words;
    this.settings = settings;
    this.owner = owner;
  }

  /** The window of this title, if it was ever opened. */
  Optional<Stage> of(String title) {
    return Optional.ofNullable(made.get(title));
  }

  boolean isOpen(String title) {
    return shown(title).get();
  }

  /** Whether the window of this title is on the screen, also before it is made. */
  ReadOnlyBooleanProperty shown(String title) {
    return shown.computeIfAbsent(title, same -> new SimpleBooleanProperty());
  }

  /** Shows a window, with content that is made the first time. */
  void show(String title, Supplier<Parent> content) {
    Stage stage = made.get(title);
    if (stage == null) {
      Parent pane = content.get();
      sheet
          .map(name -> SideWindows.class.getResource(name).toExternalForm())
          .ifPresent(pane.getStylesheets()::add);
      Look.dressTabs(pane);
      Look.follow(pane, settings.settings());
      stage = new Stage();
      stage.initOwner(owner);
      stage.setTitle(words.of(title));
      Rectangle2D room = Screen.getPrimary().getVisualBounds();
      stage.setScene(
          new Scene(
              pane, Math.min(WIDTH, room.getWidth()), Math.min(HEIGHT, room.getHeight() - 40)));
      made.put(title, stage);
      shown(title);
      shown.get(title).bind(stage.showingProperty());
    }
    stage.show();
    stage.toFront();
  }

  /** Which file to open; empty when there is none after all. */
  Optional<Path> ask(String title, String kind, String... endings) {
    return path(chooser(title, kind, endings).showOpenDialog(of(title).orElse(owner)));
  }

  /**
   * Where to save; empty when not after all.
   *
   * @param endings like {@code *.csv}; a name without one of them is given the first
   */
  Optional<Path> askWhere(String title, String kind, String... endings) {
    Window over = of(title).orElse(owner);
    List<String> plain = Stream.of(endings).map(ending -> ending.substring(1)).toList();
    return path(chooser(title, kind, endings).showSaveDialog(over))
        .flatMap(new FileEnding(plain, new ReplaceQuestion(words, over))::complete);
  }

  /** Which folder; empty when none after all. */
  Optional<Path> askFolder(String title) {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(words.of(title));
    return path(chooser.showDialog(of(title).orElse(owner)));
  }

  private FileChooser chooser(String title, String kind, String... endings) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(words.of(title));
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(words.of(kind), endings));
    return chooser;
  }

  private static Optional<Path> path(File file) {
    return Optional.ofNullable(file).map(File::toPath);
  }
}
