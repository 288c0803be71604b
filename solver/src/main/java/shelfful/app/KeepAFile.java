package shelfful.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import shelfful.files.AtomicSave;
import shelfful.files.SaveFailed;

/** Keeps a small file of the program's own, such as its settings. */
public final class KeepAFile {
  private KeepAFile() {}

  /** The bytes of a file; empty when it is not there or cannot be read. */
  public static Optional<byte[]> read(Path file) {
    try {
      return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  /**
   * Saves a file in one step; its folder is made when it is missing.
   *
   * @return why it could not be saved; empty when it was
   */
  public static Optional<String> save(Path file, byte[] bytes) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      AtomicSave.save(file, bytes);
      return Optional.empty();
    } catch (IOException failed) {
      return Optional.of("The folder of " + file.getFileName() + " could not be made.");
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    }
  }
}
