package shelfful.ware;

import shelfful.measure.Length;

/**
 * How pieces of one form are piled upright on or in each other.
 *
 * @param mostHigh how many pieces a pile may have, from {@link #LEAST} to {@link #MOST}
 * @param increment of height that each further piece adds, positive, at the form's measured stage
 */
public record Piling(int mostHigh, Length increment) {
  /** The fewest pieces that are a pile. */
  public static final int LEAST = 2;

  /**
   * The most pieces a pile may be allowed to have; beyond it a figure is taken for a slip. Ours.
   */
  public static final int MOST = 50;

  /** Refuses piles of one, piles beyond reason and increments that add nothing. */
  public Piling {
    if (mostHigh < LEAST || mostHigh > MOST) {
      throw new IllegalArgumentException(
          "A pile may be from " + LEAST + " to " + MOST + " pieces high, not " + mostHigh);
    }
    if (!increment.isPositive()) {
      throw new IllegalArgumentException("Each piece of a pile must add more than 0 of height");
    }
  }
}
