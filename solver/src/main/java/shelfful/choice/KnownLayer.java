package shelfful.choice;

import java.util.Arrays;
import java.util.stream.IntStream;

/** What was found to fit on one shelf. Two are equal when they hold as much of everything. */
public final class KnownLayer {
  private final int[] counts;
  private final int heightClass;
  private final int hash;

  /** The kinds it holds and how many of each: few of many, so loops over these are short. */
  private final int[] kinds;

  private final int[] each;

  /**
   * A content.
   *
   * @param counts of each kind; not to be changed afterwards
   * @param heightClass index of the tallest kind's height among the height classes
   */
  public KnownLayer(int[] counts, int heightClass) {
    this.counts = counts;
    this.heightClass = heightClass;
    this.hash = Arrays.hashCode(counts);
    this.kinds = IntStream.range(0, counts.length).filter(kind -> counts[kind] > 0).toArray();
    this.each = Arrays.stream(kinds).map(kind -> counts[kind]).toArray();
  }

  /** How many of each kind; not to be changed. */
  public int[] counts() {
    return counts;
  }

  /** Whether it holds nothing. */
  public boolean isEmpty() {
    return kinds.length == 0;
  }

  /** Index of the tallest kind's height among the height classes. */
  public int heightClass() {
    return heightClass;
  }

  /** The kinds that it holds, rising; not to be changed. */
  int[] kinds() {
    return kinds;
  }

  /** How many of each of {@link #kinds()}; not to be changed. */
  int[] each() {
    return each;
  }

  /** Whether this holds at least as much of everything as another. */
  boolean holds(KnownLayer other) {
    for (int i = 0; i < other.kinds.length; i++) {
      if (counts[other.kinds[i]] < other.each[i]) {
        return false;
      }
    }
    return true;
  }

  /** Adds what it holds to some counts, so many times; negative to take it off. */
  void addTo(int[] used, int times) {
    for (int i = 0; i < kinds.length; i++) {
      used[kinds[i]] += times * each[i];
    }
  }

  /** What it holds is worth at a price for each kind. */
  public double priced(double[] prices) {
    double value = 0;
    for (int i = 0; i < kinds.length; i++) {
      value += each[i] * prices[kinds[i]];
    }
    return value;
  }

  /** What it weighs when a piece of each kind weighs so much. */
  public long weighed(long[] grams) {
    long sum = 0;
    for (int i = 0; i < kinds.length; i++) {
      sum += each[i] * grams[kinds[i]];
    }
    return sum;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof KnownLayer that
        && hash == that.hash
        && Arrays.equals(counts, that.counts);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
