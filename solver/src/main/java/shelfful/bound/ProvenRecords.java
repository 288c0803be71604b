package shelfful.bound;

/**
 * Equal circles in a circle, as far as the best arrangement is proven: the least ratio of the
 * radius of the large circle to that of n small ones. Proven by R. L. Graham 1968 (to 7), U. Pirl
 * 1969 (to 10), H. Melissen 1994 (11) and F. Fodor 2000 (12), 2003 (13) and 1999 (19).
 */
final class ProvenRecords {
  /** For 1, 2, … 13, rounded down in the last place. */
  private static final double[] RATIO = {
    1, 2, 2.1547005, 2.4142135, 2.7013016, 3, 3, 3.3047648, 3.6131259, 3.8130256, 3.9238044,
    4.0296019, 4.2360679
  };

  private static final int LATER = 19;
  private static final double LATER_RATIO = 4.8637033;

  private ProvenRecords() {}

  /** No more circles of radius 1 fit in a circle of a radius. */
  static int most(double ratio) {
    if (ratio >= LATER_RATIO) {
      return Integer.MAX_VALUE;
    }
    if (ratio >= RATIO[RATIO.length - 1]) {
      return LATER - 1;
    }
    int most = 0;
    while (most < RATIO.length && RATIO[most] <= ratio) {
      most++;
    }
    return most;
  }
}
