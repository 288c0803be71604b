package shelfful.ware;

import shelfful.measure.Length;

/**
 * How pieces of one form are piled upright on or in each other.
 *
 * @param mostHigh how many pieces a pile may have, 2 to 50
 * @param increment of height that each further piece adds, positive, at the form's measured stage
 */
public record Piling(int mostHigh, Length increment) {
  public static final int LEAST = 2;
  public static final int MOST = 50;

  /** Refuses piles of one, piles beyond reason and increments that add nothing. */
  public Piling {
    if (mostHigh < LEAST || mostHigh > MOST) {
      throw new IllegalArgumentException("A pile may be from 2 to 50 pieces high, not " + mostHigh);
    }
    if (!increment.isPositive()) {
      throw new IllegalArgumentException("Each piece of a pile must add more than 0 of height");
    }
  }
}
