package shelfful.ui.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import shelfful.ui.look.Look;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.words.Words;

/** Windows beside the desk, by the keys of their titles; each is made once, and asks for files. */
final class SideWindows {
  private static final double WIDTH = 1180;
  private static final double HEIGHT = 780;

  private final Words words;
  private final SettingsViewModel settings;
  private final Stage owner;
  private final Map<String, Stage> made = new HashMap<>();
  private final Map<String, SimpleBooleanProperty> shown = new HashMap<>();

  SideWindows(Words words, SettingsViewModel settings, Stage owner) {
    this.words = words;
    this.settings = settings;
    this.owner = owner;
  }

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
      pane.getStylesheets().add(SideWindows.class.getResource("studies.css").toExternalForm());
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
    return path(chooser(title, kind, endings).showOpenDialog(made.get(title)));
  }

  /** Where to save; empty when not after all. */
  Optional<Path> askWhere(String title, String kind, String ending) {
    return path(chooser(title, kind, ending).showSaveDialog(made.get(title)))
        .map(
            file -> {
              String name = String.valueOf(file.getFileName());
              String last = ending.substring(1);
              return name.endsWith(last) ? file : file.resolveSibling(name + last);
            });
  }

  /** Which folder; empty when none after all. */
  Optional<Path> askFolder(String title) {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(words.of(title));
    return path(chooser.showDialog(made.get(title)));
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
