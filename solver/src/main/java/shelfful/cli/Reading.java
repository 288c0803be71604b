package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shelfful.app.KeepAWeek;
import shelfful.app.KeepFirings;
import shelfful.app.Opened;
import shelfful.files.Problem;
import shelfful.files.ReadResult;
import shelfful.record.UnpackedFiring;

/** Reads a file and tells every problem; remembers whether there were any. */
final class Reading {
  private final PrintStream err;
  private boolean clean = true;
  private boolean brokeRules;

  Reading(PrintStream err) {
    this.err = err;
  }

  /** What could be read, or empty when the file is of no use. */
  <T> Optional<T> take(ReadResult<T> result) {
    if (result instanceof ReadResult.Read<T> read) {
      tell(read.problems());
      return Optional.of(read.value());
    }
    tell(((ReadResult.Refused<T>) result).problems());
    return Optional.empty();
  }

  /** What was opened, or empty when it cannot be used; {@link #refusal} then tells why not. */
  <T> Optional<T> take(Opened<T> opened) {
    if (opened instanceof Opened.Ready<T> ready) {
      ready.notes().forEach(err::println);
      clean &= ready.notes().isEmpty();
      return Optional.of(ready.value());
    }
    Opened.Refused<T> refused = (Opened.Refused<T>) opened;
    refused.sentences().forEach(err::println);
    clean = false;
    brokeRules |= refused.breaksRules();
    return Optional.empty();
  }

  /**
   * A week, or a week plan that breaks no rule; empty when the file is of no use, and {@link
   * #refusal} then tells why not.
   */
  Optional<KeepAWeek.Week> week(Path file) {
    Optional<KeepAWeek.Week> week = take(KeepAWeek.open(file));
    if (week.isEmpty() && brokeRules) {
      err.println(
          file.getFileName()
              + ": The week plan breaks rules, so nothing is planned from it."
              + " Plan from the week file that it was made from.");
    }
    return week;
  }

  /** The firings that could be read, or empty when nothing but complaints came of a folder. */
  Optional<List<UnpackedFiring>> take(KeepFirings.Kept kept) {
    kept.notes().forEach(err::println);
    if (kept.firings().isEmpty() && !kept.notes().isEmpty()) {
      err.println("The record of a firing is begun with: record begin PLAN.");
      return Optional.empty();
    }
    return Optional.of(kept.firings());
  }

  /** The exit code when something that was opened cannot be used. */
  int refusal() {
    return brokeRules ? ExitCodes.RULE_BROKEN : ExitCodes.BAD_INPUT;
  }

  /** The exit code of work that was done, with what was read in mind. */
  int after(int code) {
    return code == ExitCodes.DONE && !clean ? ExitCodes.BAD_INPUT : code;
  }

  boolean isClean() {
    return clean;
  }

  private void tell(List<Problem> problems) {
    for (Problem problem : problems) {
      clean = false;
      err.println(problem.sentence());
    }
  }
}
