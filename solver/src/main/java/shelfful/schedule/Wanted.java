package shelfful.schedule;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/**
 * What is wanted more in every load than its room says: ware that was left over at the end of
 * earlier rounds, since its glaze keeps it from some levels or its form fills shelves badly. What
 * is left over is wanted more in the next round, and all else a little less: steps along a
 * subgradient (M. Held, P. Wolfe and H. Crowder, 1974). May be used by several threads.
 */
final class Wanted {
  private static final double MORE = 0.15;
  private static final double MOST = 2;

  /** What stays of it from round to round. */
  private static final double KEPT = 0.93;

  private final Map<UnitKind, Double> beyond = new HashMap<>();

  /** How many times its room a unit counts, from 1 to 2. */
  synchronized double times(UnitKind kind) {
    return 1 + beyond.getOrDefault(kind, 0.0);
  }

  /** Takes note of what was left over by a round. */
  synchronized void leftOver(Collection<UnitKind> kinds) {
    beyond.replaceAll((kind, more) -> more * KEPT);
    for (UnitKind kind : kinds) {
      beyond.merge(kind, MORE, (more, step) -> Math.min(MOST - 1, more + step));
    }
  }
}
