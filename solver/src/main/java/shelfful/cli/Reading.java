package shelfful.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import shelfful.files.Problem;
import shelfful.files.ReadResult;

/** Reads a file and tells every problem; remembers whether there were any. */
final class Reading {
  private final PrintStream err;
  private boolean clean = true;

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
