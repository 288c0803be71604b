package shelfful.geometry;

/**
 * The points p with n.p at most an offset: a straight wall.
 *
 * @param nx x of the outward unit normal; any non-zero vector is accepted and made unit, the offset
 *     along with it
 * @param ny y of the outward unit normal
 * @param offset greatest n.p inside, mm
 */
public record HalfPlane(double nx, double ny, double offset) implements Bound {
  /** Makes the normal a unit vector; refuses a zero normal and what is not finite. */
  public HalfPlane {
    Finite.numbers(nx, ny, offset);
    double length = Math.hypot(nx, ny);
    if (length < Tolerance.NO_LENGTH) {
      throw new IllegalArgumentException("a half-plane's normal must not be zero");
    }
    nx /= length;
    ny /= length;
    offset /= length;
  }

  /** The half-plane whose outward normal points in a direction (radians). */
  public static HalfPlane facing(double direction, double offset) {
    return new HalfPlane(Math.cos(direction), Math.sin(direction), offset);
  }
}
