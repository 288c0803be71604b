package shelfful.ui.look;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where a program keeps a person's settings: {@code $XDG_CONFIG_HOME} or {@code ~/.config} (XDG
 * base directory specification 0.8) on Linux, {@code Library/Application Support} on a Mac, {@code
 * %APPDATA%} on Windows.
 */
public final class SettingsFolder {
  private SettingsFolder() {}

  /** The folder on this machine; it may not be there yet. */
  public static Path here() {
    return of(
        System.getProperty("os.name", ""), System.getProperty("user.home", "."), System.getenv());
  }

  static Path of(String system, String home, Map<String, String> environment) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      String roaming = environment.get("APPDATA");
      return roaming == null || roaming.isBlank()
          ? Path.of(home, "AppData", "Roaming", "Shelfful")
          : Path.of(roaming, "Shelfful");
    }
    if (name.startsWith("mac")) {
      return Path.of(home, "Library", "Application Support", "Shelfful");
    }
    String set = environment.getOrDefault("XDG_CONFIG_HOME", "");
    // The specification has relative paths ignored.
    return Path.of(set).isAbsolute()
        ? Path.of(set, "shelfful")
        : Path.of(home, ".config", "shelfful");
  }
}
