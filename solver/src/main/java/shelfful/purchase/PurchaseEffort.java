package shelfful.purchase;

/**
 * How much is planned to measure a purchase.
 *
 * @param seeds how often each list is planned, at least 2
 * @param steps of each search
 */
public record PurchaseEffort(int seeds, long steps) {
  /** Three seeds, thirty steps. */
  public static final PurchaseEffort USUAL = new PurchaseEffort(3, 30);

  /** Refuses less than two seeds: one alone says nothing of the spread. */
  public PurchaseEffort {
    if (seeds < 2 || steps < 0) {
      throw new IllegalArgumentException(
          "A purchase is measured with at least 2 seeds and 0 steps, not " + seeds + ", " + steps);
    }
  }
}
