package shelfful.bench;

import java.util.Arrays;
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

  Optional<Figures> worst(Method method) {
    return by(method).stream().map(Run::figures).min(Comparator.naturalOrder());
  }

  LongStream pieces(Method method) {
    return by(method).stream().mapToLong(run -> run.figures().pieces());
  }

  /** Of the methods other than the planner, those whose best load beats the planner's worst. */
  List<Method> plannerLosesTo() {
    Optional<Figures> planned = worst(Method.PLANNER);
    return Arrays.stream(Method.values())
        .filter(method -> method != Method.PLANNER)
        .filter(method -> beats(best(method), planned))
        .toList();
  }

  private static boolean beats(Optional<Figures> other, Optional<Figures> planned) {
    return other.isPresent() && planned.isPresent() && other.get().compareTo(planned.get()) > 0;
  }
}
