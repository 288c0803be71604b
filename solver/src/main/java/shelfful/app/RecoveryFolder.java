package shelfful.app;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shelfful.edit.WorkPlan;
import shelfful.files.AtomicSave;
import shelfful.files.SaveFailed;
import shelfful.files.WorkReader;
import shelfful.files.WorkWriter;

/**
 * Where the desk keeps its unsaved work, a file for each running program, so that nothing is lost
 * when a program or a machine stops. What a program left behind stays until somebody has answered
 * for it.
 */
public final class RecoveryFolder {
  private static final String NAME = "desk-";
  private static final String ENDING = ".work.json";

  private final Path folder;
  private final Path own;

  /**
   * A folder that need not be there yet.
   *
   * @param folder for recovery and nothing else
   */
  public RecoveryFolder(Path folder) {
    this.folder = folder;
    this.own = folder.resolve(NAME + sign(ProcessHandle.current()) + ENDING);
  }

  /** The usual place on this system, in the user's own folders. */
  public static RecoveryFolder usual() {
    Path home = Path.of(System.getProperty("user.home"));
    Optional<Path> chosen =
        Optional.ofNullable(System.getenv("XDG_STATE_HOME"))
            .or(() -> Optional.ofNullable(System.getenv("LOCALAPPDATA")))
            .filter(name -> !name.isBlank())
            .map(Path::of);
    return new RecoveryFolder(
        chosen
            .orElseGet(() -> home.resolve(".local").resolve("state"))
            .resolve("shelfful")
            .resolve("recovery"));
  }

  /**
   * Work that a program left behind.
   *
   * @param file that holds it
   * @param saved when it was written
   * @param of the file the work belongs to, if it had one
   */
  public record Left(Path file, Instant saved, Optional<Path> of, WorkPlan plan) {}

  /**
   * Keeps the work as it is now; empty, or a sentence that says why it could not.
   *
   * @param of the file it belongs to, if it has one
   */
  public Optional<String> keep(WorkPlan plan, Optional<Path> of) {
    try {
      Files.createDirectories(folder);
      AtomicSave.save(
          own, WorkWriter.bytes(plan, of.map(path -> path.toAbsolutePath().toString())));
      return Optional.empty();
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    } catch (IOException noFolder) {
      return Optional.of("The folder " + folder + " for unsaved work cannot be made.");
    }
  }

  /** Forgets this program's own work: it was saved, or nothing of it is unsaved. */
  public void forgetOwn() {
    delete(own);
  }

  /** Whatever programs that run no more have left, the latest first. */
  public List<Left> left() {
    List<Left> found = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, NAME + "*" + ENDING)) {
      for (Path file : files) {
        if (!file.equals(own) && !isRunning(file)) {
          read(file).ifPresent(found::add);
        }
      }
    } catch (IOException nothingThere) {
      return List.of();
    }
    found.sort(Comparator.comparing(Left::saved).reversed());
    return found;
  }

  /** Somebody has answered: what was left is no longer needed. */
  public void settle(Left left) {
    delete(left.file());
  }

  private static Optional<Left> read(Path file) throws IOException {
    Instant saved = Files.getLastModifiedTime(file).toInstant();
    return WorkReader.read(file)
        .found()
        .map(work -> new Left(file, saved, work.of().map(Path::of), work.plan()));
  }

  private static boolean isRunning(Path file) {
    String name = file.getFileName().toString();
    String sign = name.substring(NAME.length(), name.length() - ENDING.length());
    return ProcessHandle.allProcesses().anyMatch(one -> sign.equals(sign(one)));
  }

  /** A number of a process is used again; with its start it is not. */
  private static String sign(ProcessHandle process) {
    long start = process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
    return process.pid() + "-" + start;
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
      Files.deleteIfExists(file.resolveSibling(file.getFileName() + ".bak"));
    } catch (IOException inUse) {
      // It is offered again at the next start, which does no harm.
      return;
    }
  }
}
