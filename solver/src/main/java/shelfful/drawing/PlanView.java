package shelfful.drawing;

import shelfful.measure.Point;

/**
 * How places in the chamber lie on a sheet that shows it from above, the far side at the top.
 *
 * @param ratio the n of 1 : n, positive
 * @param origin where the centre of the chamber lies, which may be outside the paper
 */
public record PlanView(double ratio, Spot origin) {
  /** Refuses a scale that is none. */
  public PlanView {
    if (!(ratio > 0)) {
      throw new IllegalArgumentException("A scale of 1 : " + ratio + " is none");
    }
  }

  /** Where a place in the chamber lies on the paper. */
  public Spot at(Point point) {
    return at(point.x().millimetres(), point.y().millimetres());
  }

  /** Where a place in the chamber, in millimetres, lies on the paper. */
  public Spot at(double x, double y) {
    return new Spot(origin.x() + x / ratio, origin.y() - y / ratio);
  }

  /** The place in the chamber that lies under a spot of the paper. */
  public Point placeAt(Spot spot) {
    return Point.ofMillimetres((spot.x() - origin.x()) * ratio, (origin.y() - spot.y()) * ratio);
  }

  /** A distance in the kiln as a distance on paper, both in millimetres. */
  public double onPaper(double millimetres) {
    return millimetres / ratio;
  }
}
