package shelfful.choice;

import java.util.Arrays;

/**
 * What was found to fit on one shelf.
 *
 * @param counts of each kind
 * @param heightClass index of the tallest kind's height among the height classes
 */
public record KnownLayer(int[] counts, int heightClass) {
  /** Whether this holds at least as much of everything as another. */
  boolean holds(int[] other) {
    for (int kind = 0; kind < counts.length; kind++) {
      if (counts[kind] < other[kind]) {
        return false;
      }
    }
    return true;
  }

  /** What it holds is worth at a price for each kind. */
  public double priced(double[] prices) {
    double value = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      value += counts[kind] * prices[kind];
    }
    return value;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof KnownLayer that && Arrays.equals(counts, that.counts);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(counts);
  }
}
