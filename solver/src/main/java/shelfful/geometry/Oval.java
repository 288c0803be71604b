package shelfful.geometry;

/**
 * An ellipse in its body's frame.
 *
 * @param x centre, mm
 * @param y centre, mm
 * @param halfLength half axis along {@code angle}, greater than 0, mm
 * @param halfWidth half axis across, greater than 0, mm; may exceed the half length
 * @param angle direction of the half length, radians anticlockwise from the x axis
 */
public record Oval(double x, double y, double halfLength, double halfWidth, double angle)
    implements Shape {
  /** Refuses what is not finite, and half axes that are not positive. */
  public Oval {
    Finite.numbers(x, y, angle);
    Finite.positive("oval half length", halfLength);
    Finite.positive("oval half width", halfWidth);
  }

  /** An oval about its body's own axis, its length along x. */
  public static Oval of(double halfLength, double halfWidth) {
    return new Oval(0, 0, halfLength, halfWidth, 0);
  }

  @Override
  public double centreX() {
    return x;
  }

  @Override
  public double centreY() {
    return y;
  }

  @Override
  public double area() {
    return Math.PI * halfLength * halfWidth;
  }

  /** {@inheritDoc} Uses 2 pi sqrt(ab) <= pi (a + b) <= perimeter (the latter by convexity). */
  @Override
  public double perimeterAtLeast() {
    return Math.PI * (halfLength + halfWidth);
  }

  @Override
  public double innerRadius() {
    return Math.min(halfLength, halfWidth);
  }

  @Override
  public double outerRadius() {
    return Math.max(halfLength, halfWidth);
  }
}
