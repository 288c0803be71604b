package shelfful.geometry;

/**
 * Where a body stands: its own frame turned by an angle, then its origin moved to a point.
 *
 * @param x where the body's origin is, mm
 * @param y where the body's origin is, mm
 * @param angle rotation in radians, anticlockwise
 */
public record Pose(double x, double y, double angle) {
  /** The pose that leaves everything where it is. */
  public static final Pose HERE = new Pose(0, 0, 0);

  /** Refuses what is not finite. */
  public Pose {
    Finite.numbers(x, y, angle);
  }

  /** An unturned pose at a point. */
  public static Pose at(double x, double y) {
    return new Pose(x, y, 0);
  }
}
