package shelfful.purchase;

/**
 * How many pieces more a firing holds, as measured.
 *
 * @param mean over lists and seeds
 * @param low lower end of the 95 % interval of the mean
 * @param high upper end
 * @param lists how many lists were planned
 * @param seeds how often each
 */
public record Gain(double mean, double low, double high, int lists, int seeds) {

  /** Whether even the lower end is above nothing. */
  public boolean isClear() {
    return low > 0;
  }
}
