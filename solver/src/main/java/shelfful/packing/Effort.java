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

  /** Refuses counts that would try nothing. */
  public Effort {
    if (starts < 1 || hops < 0) {
      throw new IllegalArgumentException(
          "effort needs at least 1 start and 0 hops, not " + starts + " and " + hops);
    }
  }

  /** Whether each relaxing is cut short: only worth it where few are done. */
  boolean isHasty() {
    return hops <= HASTY.hops;
  }
}
