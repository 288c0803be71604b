package shelfful.inspect.fault;

import java.util.Optional;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Point;

/**
 * A point of a shelf's edge in the shelf's frame, and the direction straight out there.
 * Micrometres.
 *
 * @param dx of the unit vector outwards
 * @param dy of the unit vector outwards
 * @param distance of the edge from the origin along that vector; below zero when it lies the other
 *     way
 */
record ShelfEdge(double dx, double dy, double distance) {

  /** On the outside of any shelf. */
  static ShelfEdge outer(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound full) {
      return new ShelfEdge(1, 0, full.diameter().micrometres() / 2.0);
    }
    if (outline instanceof ShelfOutline.HalfRound half) {
      return new ShelfEdge(0, 1, half.diameter().micrometres() / 2.0);
    }
    if (outline instanceof ShelfOutline.QuarterRound quarter) {
      double along = Math.sqrt(0.5);
      return new ShelfEdge(along, along, quarter.diameter().micrometres() / 2.0);
    }
    if (outline instanceof ShelfOutline.Polygon polygon) {
      return new ShelfEdge(0, -1, polygon.acrossFlats().micrometres() / 2.0);
    }
    if (outline instanceof ShelfOutline.HalfPolygon half) {
      return farthestFlat(half.sides(), half.acrossFlats().micrometres() / 2.0);
    }
    ShelfOutline.Rectangle rectangle = (ShelfOutline.Rectangle) outline;
    return new ShelfEdge(1, 0, rectangle.width().micrometres() / 2.0);
  }

  /** The flat side of a polygon that looks most upwards. */
  private static ShelfEdge farthestFlat(int sides, double distance) {
    double angle = -Math.PI / 2 + sides / 2 * 2 * Math.PI / sides;
    return new ShelfEdge(Math.cos(angle), Math.sin(angle), distance);
  }

  /** On the saw cut of a half or quarter. */
  static Optional<ShelfEdge> joint(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.HalfRound half) {
      return Optional.of(new ShelfEdge(0, -1, -half.sawCut().micrometres() / 2.0));
    }
    if (outline instanceof ShelfOutline.QuarterRound quarter) {
      return Optional.of(new ShelfEdge(0, -1, -quarter.sawCut().micrometres() / 2.0));
    }
    if (outline instanceof ShelfOutline.HalfPolygon half) {
      return Optional.of(new ShelfEdge(0, -1, -half.sawCut().micrometres() / 2.0));
    }
    return Optional.empty();
  }

  /** A point well inside of a shelf. */
  static ShelfEdge inside(ShelfOutline outline) {
    ShelfEdge outer = outer(outline);
    boolean whole = joint(outline).isEmpty();
    return new ShelfEdge(outer.dx, outer.dy, whole ? 0 : outer.distance / 2);
  }

  /** The same, so much farther in from the edge. */
  ShelfEdge in(double micrometres) {
    return new ShelfEdge(dx, dy, distance - micrometres);
  }

  /** Where the point comes to lie in the chamber. */
  static Point laid(ShelfPlace place, ShelfEdge edge) {
    double x = edge.dx * edge.distance;
    double y = edge.dy * edge.distance;
    double cos = Math.cos(place.turn().radians());
    double sin = Math.sin(place.turn().radians());
    return LoadEdit.point(
        place.at().x().micrometres() + x * cos - y * sin,
        place.at().y().micrometres() + x * sin + y * cos);
  }
}
