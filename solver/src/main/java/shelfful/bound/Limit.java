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
  private static final double SLACK = 1e-9;

  /**
   * What whole numbers of pieces keep, too, when they keep this limit: with shares and room in
   * units, f the part of the room beyond a whole number, every share counts its whole part, and of
   * what is left the part beyond f as (it - f)/(1 - f); the room counts its whole part
   * (mixed-integer rounding: Nemhauser and Wolsey 1990).
   *
   * @param unit greater than 0
   */
  Limit rounded(double unit) {
    double units = room / unit + SLACK;
    double rest = units - Math.floor(units);
    double[] whole = new double[shares.length];
    for (int i = 0; i < shares.length; i++) {
      double share = shares[i] / unit;
      double left = share - Math.floor(share);
      whole[i] = Math.floor(share) + Math.max(0, left - rest) / (1 - rest);
    }
    return new Limit(cause, whole, Math.floor(units));
  }

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
