package shelfful.geometry;

/**
 * A capsule in its body's frame: all points within a radius of a segment. A handle or a spout.
 *
 * @param x1 one end of the segment, mm
 * @param y1 one end of the segment, mm
 * @param x2 the other end, mm; both ends may coincide
 * @param y2 the other end, mm
 * @param radius half the width, greater than 0, mm
 */
public record Capsule(double x1, double y1, double x2, double y2, double radius) implements Shape {
  /** Refuses what is not finite, and a radius that is not positive. */
  public Capsule {
    Finite.numbers(x1, y1, x2, y2);
    Finite.positive("capsule radius", radius);
  }

  /** The length of the segment between the two end centres, mm. */
  public double spine() {
    return Math.hypot(x2 - x1, y2 - y1);
  }

  @Override
  public double centreX() {
    return (x1 + x2) / 2;
  }

  @Override
  public double centreY() {
    return (y1 + y2) / 2;
  }

  @Override
  public double area() {
    return Math.PI * radius * radius + 2 * radius * spine();
  }

  @Override
  public double perimeterAtLeast() {
    return 2 * Math.PI * radius + 2 * spine();
  }

  @Override
  public double innerRadius() {
    return radius;
  }

  @Override
  public double outerRadius() {
    return radius + spine() / 2;
  }
}
