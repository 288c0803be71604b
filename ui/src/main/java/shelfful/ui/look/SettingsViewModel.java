package shelfful.ui.look;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.KeepAFile;

/** The settings of the desk and their file: read once, saved with every change. */
public final class SettingsViewModel {
  private static final String NAME = "settings.txt";

  private final Optional<Path> file;
  private final ReadOnlyObjectWrapper<Settings> settings = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

  private SettingsViewModel(Optional<Path> file, Settings first) {
    this.file = file;
    settings.set(first);
  }

  /** Settings that live as long as the program does. */
  public static SettingsViewModel of(Settings settings) {
    return new SettingsViewModel(Optional.empty(), settings);
  }

  /**
   * The settings kept in a folder.
   *
   * @param usual where the file is missing or does not say
   */
  public static SettingsViewModel in(Path folder, Settings usual) {
    Path file = folder.resolve(NAME);
    Settings read = KeepAFile.read(file).map(b -> SettingsText.read(b, usual)).orElse(usual);
    return new SettingsViewModel(Optional.of(file), read);
  }

  /** As they are now. */
  public ReadOnlyObjectProperty<Settings> settings() {
    return settings.getReadOnlyProperty();
  }

  /** Why the file could not be saved; empty text when it was. */
  public ReadOnlyStringProperty trouble() {
    return trouble.getReadOnlyProperty();
  }

  /** Changes and saves them. What cannot be saved still counts until the program ends. */
  public void change(UnaryOperator<Settings> step) {
    settings.set(step.apply(settings.get()));
    trouble.set(
        file.flatMap(one -> KeepAFile.save(one, SettingsText.written(settings.get()))).orElse(""));
  }
}
