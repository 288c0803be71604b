package shelfful.packing;

import java.util.Objects;
import shelfful.geometry.Shape;

/**
 * A fixed thing that bodies keep clear of: a post, a thermocouple, a cone pack; or that feet alone
 * keep clear of: the joint between two shelves.
 *
 * @param shape in the shelf's frame, mm
 * @param from height over the shelf where it begins, mm
 * @param to height where it ends, mm
 * @param clearance least gap, at least 0, mm, to which each body's tolerance is added
 * @param applies what keeps clear of it: every part that shares a height with it, or the foot
 *     alone, whatever the heights
 */
public record Obstacle(Shape shape, double from, double to, double clearance, Applies applies) {
  /** Refuses an unordered height range and a negative clearance. */
  public Obstacle {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(applies, "applies");
    if (!(from < to)) {
      throw new IllegalArgumentException(
          "an obstacle must end above where it begins, but runs from " + from + " to " + to);
    }
    if (!(clearance >= 0) || Double.isInfinite(clearance)) {
      throw new IllegalArgumentException(
          "obstacle clearance must be at least 0 mm but is " + clearance);
    }
  }

  /** A thing that every part of a body keeps clear of. */
  public Obstacle(Shape shape, double from, double to, double clearance) {
    this(shape, from, to, clearance, Applies.BODY);
  }

  /** What lies in the shelf's own plane: only feet come there. */
  public static Obstacle toFeet(Shape shape, double clearance) {
    return new Obstacle(shape, 0, 1, clearance, Applies.FOOT);
  }
}
