package shelfful.ui.desk;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import shelfful.app.KeepAFile;

/**
 * Which studio was open last, so that it is set up once and for all. Opening a plan, which carries
 * a studio of its own, changes nothing here.
 *
 * @param folder of the settings
 */
record LastStudio(Path folder) {
  private static final String NAME = "last-studio.txt";

  /** The file, if it is still there. */
  Optional<Path> file() {
    try {
      return KeepAFile.read(folder.resolve(NAME))
          .map(bytes -> Path.of(new String(bytes, StandardCharsets.UTF_8).strip()))
          .filter(Files::isRegularFile);
    } catch (InvalidPathException damaged) {
      return Optional.empty();
    }
  }

  /** Notes a file; that it cannot be noted costs a choice at the next start, nothing else. */
  void note(Path file) {
    byte[] line = (file.toAbsolutePath() + "\n").getBytes(StandardCharsets.UTF_8);
    KeepAFile.save(folder.resolve(NAME), line);
  }
}
