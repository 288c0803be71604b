package shelfful.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * A proven limit of what stands on one level of a column: the sum of shares is at most the room.
 *
 * @param cause the theorem or rule behind it
 * @param shares what one piece of each offer takes, at least 0
 * @param room what there is
 */
record Limit(LimitCause cause, double[] shares, double room) {
  /** Some limits without those that another one makes idle. */
  static List<Limit> withoutIdle(List<Limit> limits) {
    List<Limit> kept = new ArrayList<>();
    for (Limit limit : limits) {
      if (kept.stream().noneMatch(limit::isIdleBeside)) {
        kept.removeIf(other -> other.isIdleBeside(limit));
        kept.add(limit);
      }
    }
    return kept;
  }

  /** Whether whatever keeps another limit keeps this one. */
  private boolean isIdleBeside(Limit other) {
    if (room <= 0) {
      return false;
    }
    for (int i = 0; i < shares.length; i++) {
      if (shares[i] * other.room > other.shares[i] * room) {
        return false;
      }
    }
    return true;
  }
}
