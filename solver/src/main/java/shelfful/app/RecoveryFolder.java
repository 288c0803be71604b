package shelfful.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shelfful.edit.WorkPlan;
import shelfful.files.WorkReader;
import shelfful.files.WorkWriter;

/**
 * Where the desk keeps its unsaved work, a file for each running program, so that nothing is lost
 * when a program or a machine stops. What a program left behind stays until somebody has answered
 * for it.
 */
public final class RecoveryFolder {
  private final Path folder;
  private final RunningFiles files;

  /**
   * A folder that need not be there yet.
   *
   * @param folder for recovery and nothing else
   */
  public RecoveryFolder(Path folder) {
    this.folder = folder;
    this.files = new RunningFiles(folder, "desk-", ".work.json");
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
    return files.keep(WorkWriter.bytes(plan, of.map(path -> path.toAbsolutePath().toString())));
  }

  /** Where it is. */
  Path path() {
    return folder;
  }

  /** Forgets this program's own work: it was saved, or nothing of it is unsaved. */
  public void forgetOwn() {
    RunningFiles.delete(files.own());
  }

  /** Whatever programs that run no more have left, the latest first. */
  public List<Left> left() {
    return files.left().stream()
        .flatMap(RecoveryFolder::read)
        .sorted(Comparator.comparing(Left::saved).reversed())
        .toList();
  }

  /** Somebody has answered: what was left is no longer needed. */
  public void settle(Left left) {
    RunningFiles.delete(left.file());
  }

  private static Stream<Left> read(Path file) {
    Instant saved = RunningFiles.saved(file);
    return WorkReader.read(file).found().stream()
        .map(work -> new Left(file, saved, work.of().map(Path::of), work.plan()));
  }
}
