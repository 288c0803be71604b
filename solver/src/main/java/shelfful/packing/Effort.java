package shelfful.packing;

/**
 * How hard to look, in counts, so that an answer never depends on the machine's speed.
 *
 * <p>A search may relax {@code starts * (1 + hops)} settings in all.
 *
 * @param starts how many times over to begin afresh, at least 1
 * @param hops tries to leave a dead end before beginning afresh, at least 0
 */
public record Effort(int starts, int hops) {
  /**
   * A millisecond or two: for questions with a neighbouring setting at hand or room to spare. Each
   * relaxing is cut short.
   */
  public static final Effort HASTY = new Effort(1, 3);

  /** Milliseconds: for the thousands of questions that planning a load asks. */
  public static final Effort QUICK = new Effort(2, 8);

  /** Tens of milliseconds: finds nearly all that can be found. */
  public static final Effort NORMAL = new Effort(6, 60);

  /** Up to seconds: reaches the record tables. */
  public static final Effort THOROUGH = new Effort(20, 200);

  private static final int MOST_HOPS_OF_A_SHORT_SEARCH = 12;
  private static final double NEARLY = 2e-4;
  private static final double NOT_FAR = 1e-3;

  /** Refuses counts that would try nothing. */
  public Effort {
    if (starts < 1 || hops < 0) {
      throw new IllegalArgumentException(
          "effort needs at least 1 start and 0 hops, not " + starts + " and " + hops);
    }
  }

  /**
   * How many settings may be relaxed when the first came to rest with so much energy left. Of 2000
   * questions of a demo load that the first relaxing did not settle, three more settled 48 in 100
   * of those left under {@link #NEARLY}, 9 in 100 under {@link #NOT_FAR}, and 6 in 100 of the rest:
   * so short searches go on where it is nearly done, and not elsewhere.
   *
   * @param squeeze energy left as a share of the bodies' squared reaches together
   */
  long relaxings(double squeeze) {
    long all = (long) starts * (1 + hops);
    if (!isShort()) {
      return all;
    }
    if (squeeze < NEARLY) {
      return 2 * all;
    }
    return squeeze < NOT_FAR ? Math.max(1, all / 2) : Math.max(1, all / 6);
  }

  /** Whether what promises little is given up for what promises more. */
  boolean isShort() {
    return hops <= MOST_HOPS_OF_A_SHORT_SEARCH;
  }

  /** Whether each relaxing is cut short: only worth it where few are done. */
  boolean isHasty() {
    return hops <= HASTY.hops;
  }
}
