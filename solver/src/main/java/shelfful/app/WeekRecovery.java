package shelfful.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shelfful.files.WeekWriter;
import shelfful.review.InspectedWeek;

/**
 * Keeps the unsaved week of each running program, beside its unsaved work, until somebody has
 * answered for it.
 */
public final class WeekRecovery {
  private final RunningFiles files;

  /** In the folder that unsaved work is kept in as well. */
  public WeekRecovery(RecoveryFolder folder) {
    files = new RunningFiles(folder.path(), "week-", ".week.json");
  }

  /**
   * A week that a program left behind.
   *
   * @param file that holds it
   * @param saved when it was written
   */
  public record Left(Path file, Instant saved, InspectedWeek week) {}

  /** Keeps the week as it is now; empty, or a sentence that says why it could not. */
  public Optional<String> keep(InspectedWeek week) {
    return files.keep(WeekWriter.bytes(week));
  }

  /** Forgets this program's own week: it was saved, or nothing of it is unsaved. */
  public void forgetOwn() {
    RunningFiles.delete(files.own());
  }

  /**
   * Whatever programs that run no more have left, the latest first; what is damaged stays there.
   */
  public List<Left> left() {
    return files.left().stream()
        .flatMap(WeekRecovery::read)
        .sorted(Comparator.comparing(Left::saved).reversed())
        .toList();
  }

  private static Stream<Left> read(Path file) {
    return KeepAWeek.open(file) instanceof Opened.Ready<KeepAWeek.Week> ready
        ? ready.value().plan().stream().map(week -> new Left(file, RunningFiles.saved(file), week))
        : Stream.empty();
  }

  /** Somebody has answered: what was left is no longer needed. */
  public void settle(Left left) {
    RunningFiles.delete(left.file());
  }
}
