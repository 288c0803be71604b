package shelfful.geometry;

/**
 * A round wall: everything within a radius of a centre.
 *
 * @param x centre, mm
 * @param y centre, mm
 * @param radius greater than 0, mm
 */
public record DiscBound(double x, double y, double radius) implements Bound {
  /** Refuses what is not finite, and a radius that is not positive. */
  public DiscBound {
    Finite.numbers(x, y);
    Finite.positive("disc bound radius", radius);
  }
}
