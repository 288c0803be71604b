package shelfful.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A convex polygon known to hold an intersection of bounds: each curved bound is replaced by
 * tangent half-planes, so every figure taken from it is an upper bound (over by about 0.03 % for a
 * full circle, exact for polygons).
 */
final class OuterPolygon {
  private static final int TANGENTS = 96;
  private static final double FAR = 1e7;
  private static final double[] COSINE =
      IntStream.range(0, TANGENTS).mapToDouble(i -> Math.cos(2 * Math.PI * i / TANGENTS)).toArray();

  private List<double[]> corners = new ArrayList<>();

  private OuterPolygon() {
    corners.add(new double[] {-FAR, -FAR});
    corners.add(new double[] {FAR, -FAR});
    corners.add(new double[] {FAR, FAR});
    corners.add(new double[] {-FAR, FAR});
  }

  /** The polygon round the intersection of the bounds, each moved inwards by an inset. */
  static OuterPolygon of(List<Bound> bounds, double inset) {
    OuterPolygon polygon = new OuterPolygon();
    for (Bound bound : bounds) {
      polygon.cutBy(bound, inset);
    }
    return polygon;
  }

  private void cutBy(Bound bound, double inset) {
    if (bound instanceof HalfPlane plane) {
      cut(plane.nx(), plane.ny(), plane.offset() - inset);
      return;
    }
    for (int i = 0; i < TANGENTS; i++) {
      double ux = COSINE[i];
      double uy = COSINE[(i + 3 * TANGENTS / 4) % TANGENTS];
      cut(ux, uy, reach(bound, ux, uy) - inset);
    }
  }

  private static double reach(Bound bound, double ux, double uy) {
    if (bound instanceof DiscBound disc) {
      return disc.x() * ux + disc.y() * uy + disc.radius();
    }
    Contour oval = Contour.of((OvalBound) bound);
    return oval.x * ux + oval.y * uy + oval.core(ux, uy);
  }

  /** Keeps the part with n.p at most the offset (Sutherland and Hodgman 1974). */
  private void cut(double nx, double ny, double offset) {
    List<double[]> kept = new ArrayList<>(corners.size() + 1);
    for (int i = 0; i < corners.size(); i++) {
      double[] from = corners.get(i);
      double[] to = corners.get((i + 1) % corners.size());
      double before = nx * from[0] + ny * from[1] - offset;
      double after = nx * to[0] + ny * to[1] - offset;
      if (before <= 0) {
        kept.add(from);
      }
      if (before * after < 0) {
        double share = before / (before - after);
        kept.add(
            new double[] {
              from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])
            });
      }
    }
    corners = kept;
  }

  boolean isUnbounded() {
    for (double[] corner : corners) {
      if (Math.abs(corner[0]) >= FAR || Math.abs(corner[1]) >= FAR) {
        return true;
      }
    }
    return false;
  }

  Extent extent() {
    if (corners.size() < 3) {
      return corners.isEmpty() ? Extent.NONE : new Extent(0, 0, 0, false);
    }
    double twiceArea = 0;
    double perimeter = 0;
    double diameter = 0;
    double[] last = corners.get(corners.size() - 1);
    for (double[] corner : corners) {
      twiceArea += last[0] * corner[1] - corner[0] * last[1];
      perimeter += Math.hypot(corner[0] - last[0], corner[1] - last[1]);
      for (double[] other : corners) {
        double dx = corner[0] - other[0];
        double dy = corner[1] - other[1];
        diameter = Math.max(diameter, dx * dx + dy * dy);
      }
      last = corner;
    }
    return new Extent(Math.max(0, twiceArea / 2), perimeter, Math.sqrt(diameter), false);
  }

  /** The middle of the bounding box. */
  double[] centre() {
    double minX = FAR;
    double minY = FAR;
    double maxX = -FAR;
    double maxY = -FAR;
    for (double[] corner : corners) {
      minX = Math.min(minX, corner[0]);
      minY = Math.min(minY, corner[1]);
      maxX = Math.max(maxX, corner[0]);
      maxY = Math.max(maxY, corner[1]);
    }
    return new double[] {(minX + maxX) / 2, (minY + maxY) / 2};
  }

  double farthestFrom(double x, double y) {
    double farthest = 0;
    for (double[] corner : corners) {
      farthest = Math.max(farthest, Math.hypot(corner[0] - x, corner[1] - y));
    }
    return farthest;
  }
}
