package shelfful.kiln;

import shelfful.measure.Length;

/**
 * A kind of post in the cupboard, and how many there are.
 *
 * @param id unique within a studio
 * @param length how far it holds a shelf up, positive
 * @param across the diameter of the smallest circle round its section, positive
 * @param count how many are in the cupboard, not negative
 */
public record Post(String id, Length length, Length across, int count) {
  /** Refuses sizes that are not positive and a negative count. */
  public Post {
    if (!length.isPositive() || !across.isPositive()) {
      throw new IllegalArgumentException("The post " + id + " must be larger than 0");
    }
    if (count < 0) {
      throw new IllegalArgumentException("There cannot be " + count + " posts " + id);
    }
  }
}
