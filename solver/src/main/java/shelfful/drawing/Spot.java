package shelfful.drawing;

/**
 * A place on a sheet, in millimetres of paper from its top left corner.
 *
 * @param x to the right
 * @param y down
 */
public record Spot(double x, double y) {
  /** Refuses a place that no surface could paint. */
  public Spot {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("A spot must be finite, not " + x + ", " + y);
    }
  }

  Spot plus(double right, double down) {
    return new Spot(x + right, y + down);
  }

  double distanceTo(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** The place a share of the way to another: 0 here, 1 there. */
  Spot towards(Spot other, double share) {
    return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
  }
}
