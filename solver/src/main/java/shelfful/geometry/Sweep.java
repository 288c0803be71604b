package shelfful.geometry;

/**
 * Finds the greatest F of a {@link Climb} over all directions by looking all round and refining
 * every local maximum seen. Used where several maxima may exist (overlapping bodies, an oval inside
 * an oval); slow beside a single climb.
 */
final class Sweep {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final int REFINEMENTS = 50;

  private Sweep() {}

  /** The best F and its direction, offered to the contact. */
  static void all(Climb climb, int directions, Contact out) {
    double step = 2 * Math.PI / directions;
    double before = at(climb, -step);
    double here = at(climb, 0);
    for (int i = 0; i < directions; i++) {
      double after = at(climb, (i + 1) * step);
      if (here >= before && here >= after) {
        refine(climb, i * step, step, out);
      }
      before = here;
      here = after;
    }
  }

  /** Golden-section search: also right where F has a corner, as it has for a capsule. */
  private static void refine(Climb climb, double middle, double step, Contact out) {
    double low = middle - step;
    double high = middle + step;
    double lower = high - GOLDEN * (high - low);
    double upper = low + GOLDEN * (high - low);
    double atLower = at(climb, lower);
    double atUpper = at(climb, upper);
    for (int i = 0; i < REFINEMENTS; i++) {
      if (atLower >= atUpper) {
        high = upper;
        upper = lower;
        atUpper = atLower;
        lower = high - GOLDEN * (high - low);
        atLower = at(climb, lower);
      } else {
        low = lower;
        lower = upper;
        atLower = atUpper;
        upper = low + GOLDEN * (high - low);
        atUpper = at(climb, upper);
      }
    }
    double best = (low + high) / 2;
    out.offer(at(climb, best), Math.cos(best), Math.sin(best));
  }

  private static double at(Climb climb, double angle) {
    return climb.value(Math.cos(angle), Math.sin(angle));
  }
}
