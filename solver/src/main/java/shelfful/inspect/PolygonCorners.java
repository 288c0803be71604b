package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;

/** Corners and edges of convex polygons about the origin. */
final class PolygonCorners {
  private static final double FULL_TURN = 360_000;
  private static final double DOWN = -90_000;

  private PolygonCorners() {}

  /** The edges of a regular polygon with one flat side towards −y. */
  static List<Wall> regularWalls(int sides, double acrossFlats) {
    List<Wall> walls = new ArrayList<>();
    for (int k = 0; k < sides; k++) {
      walls.add(new Wall(Vector.towards(DOWN + k * FULL_TURN / sides), acrossFlats / 2));
    }
    return walls;
  }

  /** Its corners, anticlockwise. */
  static List<Vector> regular(int sides, double acrossFlats) {
    double fromMiddle = acrossFlats / 2 / Math.cos(Math.PI / sides);
    List<Vector> corners = new ArrayList<>();
    for (int k = 0; k < sides; k++) {
      corners.add(Vector.towards(DOWN + (k + 0.5) * FULL_TURN / sides).times(fromMiddle));
    }
    return corners;
  }

  /** The corners of what lies inside of an edge. */
  static List<Vector> cut(List<Vector> corners, Wall wall) {
    List<Vector> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vector from = corners.get(i);
      Vector to = corners.get((i + 1) % corners.size());
      if (wall.holds(from)) {
        kept.add(from);
      }
      if (wall.holds(from) != wall.holds(to)) {
        double fromOver = wall.outwards().dot(from) - wall.offset();
        double toOver = wall.outwards().dot(to) - wall.offset();
        kept.add(from.plus(to.minus(from).times(fromOver / (fromOver - toOver))));
      }
    }
    return kept;
  }

  /** The centroid of the area of a polygon with some area, by the shoelace formula. */
  static Vector centroid(List<Vector> corners) {
    double twiceArea = 0;
    Vector moment = Vector.ZERO;
    for (int i = 0; i < corners.size(); i++) {
      Vector from = corners.get(i);
      Vector to = corners.get((i + 1) % corners.size());
      double twice = from.cross(to);
      twiceArea += twice;
      moment = moment.plus(from.plus(to).times(twice));
    }
    return moment.times(1 / (3 * twiceArea));
  }
}
