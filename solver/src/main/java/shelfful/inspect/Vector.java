package shelfful.inspect;

import shelfful.measure.Point;

/**
 * A point or a direction in the plan. Points are in micrometres, chamber frame unless said
 * otherwise.
 */
record Vector(double x, double y) {
  static final Vector ZERO = new Vector(0, 0);

  private static final int QUARTER = 90_000;

  static Vector of(Point point) {
    return new Vector(point.x().micrometres(), point.y().micrometres());
  }

  /** The unit vector in a direction, exact at every quarter turn. */
  static Vector towards(double millidegrees) {
    if (millidegrees % QUARTER == 0) {
      return switch ((int) Math.floorMod(Math.round(millidegrees / QUARTER), 4L)) {
        case 0 -> new Vector(1, 0);
        case 1 -> new Vector(0, 1);
        case 2 -> new Vector(-1, 0);
        default -> new Vector(0, -1);
      };
    }
    double radians = Math.toRadians(millidegrees / 1000);
    return new Vector(Math.cos(radians), Math.sin(radians));
  }

  Vector plus(Vector other) {
    return new Vector(x + other.x, y + other.y);
  }

  Vector minus(Vector other) {
    return new Vector(x - other.x, y - other.y);
  }

  Vector times(double factor) {
    return new Vector(x * factor, y * factor);
  }

  /** Turned as the x axis is turned to get this unit vector. */
  Vector turnedWith(Vector unit) {
    return new Vector(x * unit.x - y * unit.y, x * unit.y + y * unit.x);
  }

  /** A quarter turn anticlockwise. */
  Vector quarterTurned() {
    return new Vector(-y, x);
  }

  double dot(Vector other) {
    return x * other.x + y * other.y;
  }

  double cross(Vector other) {
    return x * other.y - y * other.x;
  }

  double length() {
    return Math.sqrt(x * x + y * y);
  }

  /** The same direction with length 1; of no meaning for the zero vector. */
  Vector unit() {
    return times(1 / length());
  }
}
