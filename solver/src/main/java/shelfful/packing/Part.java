package shelfful.packing;

import java.util.Objects;
import shelfful.geometry.Shape;

/**
 * One convex piece of a body and the heights at which it exists.
 *
 * @param shape outline in the body's frame, mm
 * @param from height over the shelf where it begins, mm
 * @param to height over the shelf where it ends, greater than {@code from}, mm
 */
public record Part(Shape shape, double from, double to) {
  /** Refuses an empty or unordered height range. */
  public Part {
    Objects.requireNonNull(shape, "shape");
    if (!(from < to)) {
      throw new IllegalArgumentException(
          "a part must end above where it begins, but runs from " + from + " to " + to + " mm");
    }
  }

  /** Whether some height lies strictly inside both ranges; ends that just meet do not count. */
  boolean sharesHeightWith(double otherFrom, double otherTo) {
    return from < otherTo && otherFrom < to;
  }
}
