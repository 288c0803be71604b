package shelfful.geometry;

/**
 * An oval wall: the inside of an ellipse.
 *
 * @param x centre, mm
 * @param y centre, mm
 * @param halfLength half axis along {@code angle}, greater than 0, mm
 * @param halfWidth half axis across, greater than 0, mm
 * @param angle direction of the half length, radians anticlockwise from the x axis
 */
public record OvalBound(double x, double y, double halfLength, double halfWidth, double angle)
    implements Bound {
  /** Refuses what is not finite, and half axes that are not positive. */
  public OvalBound {
    Finite.numbers(x, y, angle);
    Finite.positive("oval bound half length", halfLength);
    Finite.positive("oval bound half width", halfWidth);
  }
}
