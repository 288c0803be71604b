package shelfful.app;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.files.AtomicSave;
import shelfful.files.SaveFailed;

/**
 * One file for each running program in a folder for recovery.
 *
 * @param folder for recovery and nothing else; it need not be there yet
 * @param name what every file's name begins with
 * @param ending of every file's name
 */
record RunningFiles(Path folder, String name, String ending) {

  /** The file of this program. */
  Path own() {
    return folder.resolve(name + sign(ProcessHandle.current()) + ending);
  }

  /** Keeps something in this program's file; empty, or a sentence that says why it could not. */
  Optional<String> keep(byte[] bytes) {
    try {
      Files.createDirectories(folder);
      AtomicSave.save(own(), bytes);
      return Optional.empty();
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    } catch (IOException noFolder) {
      return Optional.of("The folder " + folder + " for unsaved work cannot be made.");
    }
  }

  /** The files of programs that run no more. */
  List<Path> left() {
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, name + "*" + ending)) {
      for (Path file : files) {
        if (!file.equals(own()) && !isRunning(file)) {
          found.add(file);
        }
      }
    } catch (IOException nothingThere) {
      return List.of();
    }
    return found;
  }

  private boolean isRunning(Path file) {
    String whole = file.getFileName().toString();
    String sign = whole.substring(name.length(), whole.length() - ending.length());
    return ProcessHandle.allProcesses().anyMatch(one -> sign.equals(sign(one)));
  }

  /** A number of a process is used again; with its start it is not. */
  private static String sign(ProcessHandle process) {
    long start = process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
    return process.pid() + "-" + start;
  }

  /** Deletes a file and the version before it. */
  static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
      Files.deleteIfExists(file.resolveSibling(file.getFileName() + ".bak"));
    } catch (IOException inUse) {
      // It is offered again at the next start, which does no harm.
      return;
    }
  }

  /** When a file was written; long ago where that cannot be told. */
  static Instant saved(Path file) {
    try {
      return Files.getLastModifiedTime(file).toInstant();
    } catch (IOException gone) {
      return Instant.EPOCH;
    }
  }
}
