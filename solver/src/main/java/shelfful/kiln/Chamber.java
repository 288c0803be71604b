package shelfful.kiln;

import shelfful.measure.Length;

/**
 * The inside of a kiln.
 *
 * @param floorPlan seen from above, the same at every height
 * @param height from the floor to the lid or roof
 */
public record Chamber(FloorPlan floorPlan, Length height) {
  /** Refuses a height that is not positive. */
  public Chamber {
    if (!height.isPositive()) {
      throw new IllegalArgumentException("A chamber must be higher than 0");
    }
  }
}
