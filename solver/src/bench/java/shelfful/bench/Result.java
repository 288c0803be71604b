package shelfful.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * Everything measured of one instance.
 *
 * @param subject its name
 * @param listed pieces on its list
 * @param limit what no load can exceed, if that is known
 * @param runs in the order they were made
 */
record Result(String subject, int listed, Optional<Limit> limit, List<Run> runs) {
  Result {
    runs = List.copyOf(runs);
  }

  List<Run> by(Method method) {
    return runs.stream().filter(run -> run.method() == method).toList();
  }

  Optional<Figures> best(Method method) {
    return by(method).stream().map(Run::figures).max(Comparator.naturalOrder());
  }

  LongStream pieces(Method method) {
    return by(method).stream().mapToLong(run -> run.figures().pieces());
  }

  /** How many of the planner's runs are beaten by another method's best load. */
  long plannerLosesTo(Method method) {
    Optional<Figures> other = best(method);
    return by(Method.PLANNER).stream()
        .filter(run -> other.isPresent() && other.get().compareTo(run.figures()) > 0)
        .count();
  }
}
