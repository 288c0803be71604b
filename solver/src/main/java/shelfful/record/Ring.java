package shelfful.record;

import shelfful.kiln.FloorPlan;
import shelfful.measure.Point;

/**
 * How far out in the chamber a piece stands: three rings of equal area. In a round or polygonal
 * chamber the borders lie at √⅓ and √⅔ of the distance from the middle to the wall, in an oval or
 * rectangular one at the same shares of each half axis or half side.
 */
public enum Ring {
  CENTRE,
  BETWEEN,
  EDGE;

  /** The ring a place in the chamber frame lies in; beyond the wall it is the edge. */
  public static Ring of(FloorPlan chamber, Point at) {
    double x = at.x().millimetres() / (chamber.width().millimetres() / 2);
    double y = at.y().millimetres() / (chamber.depth().millimetres() / 2);
    double out =
        chamber instanceof FloorPlan.Rectangle
            ? Math.max(Math.abs(x), Math.abs(y))
            : Math.hypot(x, y);
    double share = out * out;
    return share < 1 / 3.0 ? CENTRE : share < 2 / 3.0 ? BETWEEN : EDGE;
  }
}
