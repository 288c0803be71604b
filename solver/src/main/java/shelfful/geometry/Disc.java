package shelfful.geometry;

/**
 * A disc in its body's frame.
 *
 * @param x centre, mm
 * @param y centre, mm
 * @param radius greater than 0, mm
 */
public record Disc(double x, double y, double radius) implements Shape {
  /** Refuses what is not finite, and a radius that is not positive. */
  public Disc {
    Finite.numbers(x, y);
    Finite.positive("disc radius", radius);
  }

  /** A disc about its body's own axis. */
  public static Disc of(double radius) {
    return new Disc(0, 0, radius);
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
    return Math.PI * radius * radius;
  }

  @Override
  public double perimeterAtLeast() {
    return 2 * Math.PI * radius;
  }

  @Override
  public double innerRadius() {
    return radius;
  }

  @Override
  public double outerRadius() {
    return radius;
  }
}
