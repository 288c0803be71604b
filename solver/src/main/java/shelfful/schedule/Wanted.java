package shelfful.schedule;

import java.util.HashMap;
import java.util.Map;

/**
 * What is wanted more in every load than its room says: ware that was left over at the end of
 * earlier rounds, since its glaze keeps it from some levels or its form fills shelves badly. What
 * is left over is wanted more in the next round, and all else a little less: steps along a
 * subgradient (M. Held, P. Wolfe and H. Crowder, 1974). May be used by several threads.
 */
final class Wanted {
  /** What a kind is wanted more that was left over as a whole; a part of it by its share. */
  private static final double MORE = 0.6;

  private static final double MOST = 2.5;

  /** What stays of it from round to round. */
  private static final double KEPT = 0.93;

  private final Map<UnitKind, Double> beyond = new HashMap<>();

  /** How many times its room a unit counts, at least 1. */
  synchronized double times(UnitKind kind) {
    return 1 + beyond.getOrDefault(kind, 0.0);
  }

  /**
   * Takes note of what was left over by a round.
   *
   * @param shares of all there is of a kind, from 0 to 1
   */
  synchronized void leftOver(Map<UnitKind, Double> shares) {
    beyond.replaceAll((kind, more) -> more * KEPT);
    shares.forEach(
        (kind, share) ->
            beyond.merge(kind, MORE * share, (more, step) -> Math.min(MOST - 1, more + step)));
  }
}
