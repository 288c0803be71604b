package shelfful.kiln;

import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Mass;

/**
 * A kind of shelf in the cupboard, and how many there are.
 *
 * @param id unique within a studio
 * @param name as the potter says it
 * @param outline seen from above
 * @param thickness positive
 * @param massLimit the most that may stand on it, as its maker or the potter says; empty when
 *     unknown
 * @param hottest the hottest cone it may be fired to; empty when unknown
 * @param count how many are in the cupboard, not negative
 */
public record Shelf(
    String id,
    String name,
    ShelfOutline outline,
    Length thickness,
    Optional<Mass> massLimit,
    Optional<Cone> hottest,
    int count) {
  /** Refuses a shelf without thickness and a negative count. */
  public Shelf {
    if (!thickness.isPositive()) {
      throw new IllegalArgumentException("The shelf " + id + " must be thicker than 0");
    }
    if (count < 0) {
      throw new IllegalArgumentException("There cannot be " + count + " shelves " + id);
    }
  }
}
