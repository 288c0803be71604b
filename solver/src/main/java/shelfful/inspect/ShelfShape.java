package shelfful.inspect;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Angle;
import shelfful.measure.Point;

/**
 * A shelf outline in its own frame, in micrometres, with what the judge needs of it.
 *
 * @param walls its straight edges
 * @param corners all of them; none for a full disc
 * @param diameter of the disc it was cut from, 0 for one that is straight all round
 * @param centroid of its area
 */
record ShelfShape(List<Wall> walls, List<Vector> corners, long diameter, Vector centroid) {

  static ShelfShape of(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound full) {
      return new ShelfShape(List.of(), List.of(), full.diameter().micrometres(), Vector.ZERO);
    }
    if (outline instanceof ShelfOutline.HalfRound half) {
      return CutDisc.half(half.diameter().micrometres(), half.sawCut().micrometres());
    }
    if (outline instanceof ShelfOutline.QuarterRound quarter) {
      return CutDisc.quarter(quarter.diameter().micrometres(), quarter.sawCut().micrometres());
    }
    if (outline instanceof ShelfOutline.Polygon polygon) {
      double across = polygon.acrossFlats().micrometres();
      return straight(
          PolygonCorners.regularWalls(polygon.sides(), across),
          PolygonCorners.regular(polygon.sides(), across));
    }
    if (outline instanceof ShelfOutline.HalfPolygon half) {
      return halfPolygon(half);
    }
    return rectangle((ShelfOutline.Rectangle) outline);
  }

  private static ShelfShape halfPolygon(ShelfOutline.HalfPolygon half) {
    double across = half.acrossFlats().micrometres();
    Wall cut = new Wall(new Vector(0, -1), -half.sawCut().micrometres() / 2.0);
    List<Wall> walls = PolygonCorners.regularWalls(half.sides(), across);
    walls.add(cut);
    return straight(walls, PolygonCorners.cut(PolygonCorners.regular(half.sides(), across), cut));
  }

  private static ShelfShape rectangle(ShelfOutline.Rectangle rectangle) {
    double x = rectangle.width().micrometres() / 2.0;
    double y = rectangle.depth().micrometres() / 2.0;
    List<Vector> corners =
        List.of(new Vector(-x, -y), new Vector(x, -y), new Vector(x, y), new Vector(-x, y));
    return straight(rectangleWalls(x, y), corners);
  }

  static List<Wall> rectangleWalls(double halfWidth, double halfDepth) {
    return List.of(
        new Wall(new Vector(1, 0), halfWidth),
        new Wall(new Vector(-1, 0), halfWidth),
        new Wall(new Vector(0, 1), halfDepth),
        new Wall(new Vector(0, -1), halfDepth));
  }

  private static ShelfShape straight(List<Wall> walls, List<Vector> corners) {
    return new ShelfShape(walls, corners, 0, PolygonCorners.centroid(corners));
  }

  /** What it covers when its origin lies at a point and it is turned. */
  Footprint footprint(Point at, Angle turn) {
    if (corners.isEmpty()) {
      return new Disc(at.x().micrometres(), at.y().micrometres(), diameter);
    }
    Vector direction = Vector.towards(turn.millidegrees());
    List<Vector> laid = corners.stream().map(corner -> laid(corner, at, direction)).toList();
    return new Slab(Vector.of(at), laid, walls(at, direction), diameter / 2.0);
  }

  /** Where something has to lie to lie over it. */
  Room room(Point at, Angle turn) {
    Optional<Footprint> round =
        diameter == 0
            ? Optional.empty()
            : Optional.of(new Disc(at.x().micrometres(), at.y().micrometres(), diameter));
    return new Room(walls(at, Vector.towards(turn.millidegrees())), round);
  }

  /** Where its centroid comes to lie. */
  Vector centroid(Point at, Angle turn) {
    return laid(centroid, at, Vector.towards(turn.millidegrees()));
  }

  private List<Wall> walls(Point at, Vector direction) {
    return walls.stream().map(wall -> wall.laid(direction, Vector.of(at))).toList();
  }

  private static Vector laid(Vector local, Point at, Vector direction) {
    return local.turnedWith(direction).plus(Vector.of(at));
  }
}
