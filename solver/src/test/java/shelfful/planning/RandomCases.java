package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;

/**
 * Drives what tries requests that nobody thought of, seed after seed: a thousand, or as many as
 * {@code -DargLine="-Dcases=5000 -DfirstCase=1000"} says.
 */
final class RandomCases {
  private RandomCases() {}

  /** What many seeds have to complain of, each with its seed. */
  static List<String> complaints(LongFunction<List<String>> ofSeed) {
    long first = Long.getLong("firstCase", 0);
    long cases = Long.getLong("cases", 1000);
    List<String> complaints = new ArrayList<>();
    for (long seed = first; seed < first + cases; seed++) {
      for (String complaint : ofSeed.apply(seed)) {
        complaints.add("seed " + seed + ": " + complaint);
      }
    }
    return complaints;
  }

  /** What is wrong with a load: by counting, and by the inspector. */
  static List<String> wrong(Load load) {
    List<String> complaints = new ArrayList<>(LoadAccount.wrong(load));
    if (new Inspector().inspect(load) instanceof Inspection.Failed failed) {
      failed.findings().forEach(finding -> complaints.add(finding.toString()));
    }
    return complaints;
  }
}
