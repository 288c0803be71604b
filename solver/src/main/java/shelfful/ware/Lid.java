package shelfful.ware;

import shelfful.measure.Length;
import shelfful.measure.Mass;

/**
 * The lid of a form, fired on its pot (one footprint, full height) or beside it.
 *
 * @param outline of the lid, on its own and on the pot
 * @param height of the lid standing on the shelf by itself
 * @param rise how much higher the pot is with the lid on
 * @param mass of the lid alone
 */
public record Lid(Outline outline, Length height, Length rise, Mass mass) {
  /** Refuses heights that are not positive. */
  public Lid {
    if (!height.isPositive() || !rise.isPositive()) {
      throw new IllegalArgumentException("A lid's height and rise must be more than 0");
    }
  }
}
