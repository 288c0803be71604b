package shelfful.ui.desk;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import shelfful.app.KeepAFile;

/**
 * In which folder firings are kept: the one chosen last, at first {@code shelfful/firings} in the
 * person's home.
 *
 * @param settings the folder of the settings, where the choice is noted
 */
record FiringsPlace(Path settings) {
  private static final String NAME = "firings-folder.txt";

  Path folder() {
    Path usual = Path.of(System.getProperty("user.home", "."), "shelfful", "firings");
    try {
      return KeepAFile.read(settings.resolve(NAME))
          .map(bytes -> new String(bytes, StandardCharsets.UTF_8).strip())
          .filter(text -> !text.isEmpty())
          .map(Path::of)
          .orElse(usual);
    } catch (InvalidPathException damaged) {
      return usual;
    }
  }

  /** Notes a folder; that it cannot be noted costs a choice at the next start, nothing else. */
  void note(Path folder) {
    byte[] line = (folder.toAbsolutePath() + "\n").getBytes(StandardCharsets.UTF_8);
    KeepAFile.save(settings.resolve(NAME), line);
  }
}
