package shelfful.learning;

/**
 * From where to where a rate may well lie.
 *
 * @param low from 0
 * @param high to 1
 */
public record Interval(double low, double high) {
  /** Refuses borders that are out of order or beyond 0 and 1. */
  public Interval {
    if (!(0 <= low && low <= high && high <= 1)) {
      throw new IllegalArgumentException("No interval of a rate: " + low + " to " + high);
    }
  }

  /** Whether a rate lies in it. */
  public boolean holds(double rate) {
    return low <= rate && rate <= high;
  }
}
