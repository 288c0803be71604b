package shelfful.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Takes a whole file into memory, up to the size that a file of ours may have. */
final class FileBytes {
  static final int MOST = 32 << 20;

  private FileBytes() {}

  static String nameOf(Path path) {
    return path.getFileName() == null ? path.toString() : path.getFileName().toString();
  }

  /** The bytes, or empty with a problem noted. */
  static Optional<byte[]> of(Path path, Problems problems) {
    if (Files.isDirectory(path)) {
      problems.add("", "", "This is a folder, not a file.", "Name a file in it.");
      return Optional.empty();
    }
    try (InputStream stream = Files.newInputStream(path)) {
      byte[] bytes = stream.readNBytes(MOST + 1);
      return fits(bytes, problems) ? Optional.of(bytes) : Optional.empty();
    } catch (NoSuchFileException e) {
      problems.add("", "", "There is no such file.", "Check its name and folder.");
    } catch (AccessDeniedException e) {
      problems.add("", "", "The file may not be read.", "Check who may read it.");
    } catch (IOException e) {
      problems.add(
          "",
          "",
          "The file could not be read to its end.",
          "Copy it to this computer and try again.");
    }
    return Optional.empty();
  }

  static boolean fits(byte[] bytes, Problems problems) {
    if (bytes.length > MOST) {
      problems.add("", "", "The file is larger than 32 MB.", "Check that it is the right file.");
      return false;
    }
    return true;
  }
}
