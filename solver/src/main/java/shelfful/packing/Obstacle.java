package shelfful.packing;

import java.util.Objects;
import shelfful.geometry.Shape;

/**
 * A fixed thing that bodies keep clear of: a post, a thermocouple, a cone pack.
 *
 * @param shape in the shelf's frame, mm
 * @param from height over the shelf where it begins, mm
 * @param to height where it ends, mm
 * @param clearance least gap, at least 0, mm, to which each body's tolerance is added
 */
public record Obstacle(Shape shape, double from, double to, double clearance) {
  /** Refuses an unordered height range and a negative clearance. */
  public Obstacle {
    Objects.requireNonNull(shape, "shape");
    if (!(from < to)) {
      throw new IllegalArgumentException(
          "an obstacle must end above where it begins, but runs from " + from + " to " + to);
    }
    if (!(clearance >= 0) || Double.isInfinite(clearance)) {
      throw new IllegalArgumentException(
          "obstacle clearance must be at least 0 mm but is " + clearance);
    }
  }
}
