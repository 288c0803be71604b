package shelfful.purchase;

/**
 * How often a kiln is fired and what that costs.
 *
 * @param firings a month
 * @param cost of one, in the potter's own money
 */
public record MonthlyFirings(double firings, double cost) {
  /** Refuses figures that are negative, without end or no numbers. */
  public MonthlyFirings {
    if (!(firings >= 0 && cost >= 0 && Double.isFinite(firings) && Double.isFinite(cost))) {
      throw new IllegalArgumentException(
          "Firings and their cost must be numbers of at least 0, not " + firings + ", " + cost);
    }
  }

  /**
   * What is saved a month when the same ware goes through in fuller firings: of the firings a month
   * the share gain / (now + gain) is not needed any more. It holds only as long as there is always
   * more ware than a firing takes.
   */
  double saved(double piecesNow, double gain) {
    return gain <= 0 || piecesNow + gain <= 0 ? 0 : firings * cost * gain / (piecesNow + gain);
  }
}
