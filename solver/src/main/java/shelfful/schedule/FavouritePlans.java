package shelfful.schedule;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * In which column plan of a kiln loads come out fullest, by program: trying every one takes several
 * times as long. After a few loads that were planned in all of them only the one that did best is
 * tried, and every so many loads all of them again. May be used by several threads.
 */
final class FavouritePlans {
  /** So many loads are planned in all column plans before one is a favourite. */
  private static final int FIRST = 2;

  /** After that one load of so many. */
  private static final int AGAIN = 6;

  /** What an earlier trial counts beside the next one: ware changes in the course of a week. */
  private static final double KEPT = 0.9;

  private final Map<Integer, Tally> tallies = new HashMap<>();

  /** How plans did in the trials of a program. */
  private static final class Tally {
    final Map<String, Double> shares = new HashMap<>();
    int trials;
    int asked;

    Optional<String> best() {
      return shares.entrySet().stream()
          .max(
              Map.Entry.<String, Double>comparingByValue()
                  .thenComparing(Map.Entry.<String, Double>comparingByKey().reversed()))
          .map(Map.Entry::getKey);
    }
  }

  /** The column plan to try, or empty to try all. */
  synchronized Optional<String> plan(KilnProgram program) {
    Tally tally = tally(program);
    tally.asked++;
    return tally.trials < FIRST || tally.asked % AGAIN == 0 ? Optional.empty() : tally.best();
  }

  /**
   * Remembers a trial.
   *
   * @param shares by column plan, how much of what was asked for went in, as a share of what went
   *     in with the best of them
   */
  synchronized void tried(KilnProgram program, Map<String, Double> shares) {
    Tally tally = tally(program);
    tally.trials++;
    tally.shares.replaceAll((plan, sum) -> sum * KEPT);
    shares.forEach((plan, share) -> tally.shares.merge(plan, share, Double::sum));
  }

  private Tally tally(KilnProgram program) {
    return tallies.computeIfAbsent(program.index(), any -> new Tally());
  }
}
