package shelfful.inspect;

import java.util.List;

/**
 * A convex plate: the hull of its corners, with an arc between some of them where it was cut from a
 * disc.
 *
 * @param middle of the disc it was cut from, or any point inside
 * @param corners all of them, in any order
 * @param walls the straight edges that the arc ends at; of no use without an arc
 * @param arcRadius of the arc about the middle; 0 when there is none
 */
record Slab(Vector middle, List<Vector> corners, List<Wall> walls, double arcRadius)
    implements Footprint {

  /** The hull of some points. */
  static Slab hullOf(List<Vector> points) {
    return new Slab(points.get(0), points, List.of(), 0);
  }

  @Override
  public Vector farthest(Vector direction) {
    if (arcRadius > 0) {
      Vector onArc = middle.plus(direction.times(arcRadius / direction.length()));
      if (isInside(onArc)) {
        return onArc;
      }
    }
    Vector best = corners.get(0);
    for (Vector corner : corners) {
      if (corner.dot(direction) > best.dot(direction)) {
        best = corner;
      }
    }
    return best;
  }

  private boolean isInside(Vector point) {
    for (Wall wall : walls) {
      if (!wall.holds(point)) {
        return false;
      }
    }
    return true;
  }

  @Override
  public double radius() {
    return 0;
  }

  @Override
  public double reach() {
    double farthest = arcRadius;
    for (Vector corner : corners) {
      farthest = Math.max(farthest, corner.minus(middle).length());
    }
    return farthest;
  }
}
