package shelfful.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import shelfful.measure.Point;

/** A convex ring of corners, anticlockwise, in millimetres. */
final class ConvexRing {
  private final List<double[]> corners;

  ConvexRing(List<double[]> corners) {
    this.corners = List.copyOf(corners);
  }

  /** A regular ring with a flat side towards -y, this far from the middle to each side. */
  static ConvexRing regular(int sides, double toSide) {
    List<double[]> corners = new ArrayList<>();
    double toCorner = toSide / Math.cos(Math.PI / sides);
    for (int i = 0; i < sides; i++) {
      double angle = -Math.PI / 2 + (2 * i - 1) * Math.PI / sides;
      corners.add(new double[] {toCorner * Math.cos(angle), toCorner * Math.sin(angle)});
    }
    return new ConvexRing(corners);
  }

  /** The hull of points by Andrew's monotone chain (Inf. Proc. Letters 9, 1979). */
  static ConvexRing hullOf(List<Point> points) {
    List<double[]> sorted = new ArrayList<>();
    points.forEach(p -> sorted.add(new double[] {p.x().millimetres(), p.y().millimetres()}));
    sorted.sort((a, b) -> a[0] == b[0] ? Double.compare(a[1], b[1]) : Double.compare(a[0], b[0]));
    List<double[]> hull = chain(sorted);
    Collections.reverse(sorted);
    hull.addAll(chain(sorted));
    return new ConvexRing(hull);
  }

  private static List<double[]> chain(List<double[]> sorted) {
    List<double[]> chain = new ArrayList<>();
    for (double[] point : sorted) {
      while (chain.size() >= 2
          && cross(chain.get(chain.size() - 2), chain.get(chain.size() - 1), point) <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }

  ConvexRing movedTo(double x, double y, double turn) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new ConvexRing(
        corners.stream()
            .map(c -> new double[] {x + cos * c[0] - sin * c[1], y + sin * c[0] + cos * c[1]})
            .toList());
  }

  /** The part with y of at least a value. */
  ConvexRing above(double y) {
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      double[] a = corners.get(i);
      double[] b = corners.get((i + 1) % corners.size());
      if (a[1] >= y) {
        kept.add(a);
      }
      if (a[1] >= y != b[1] >= y) {
        double share = (y - a[1]) / (b[1] - a[1]);
        kept.add(new double[] {a[0] + share * (b[0] - a[0]), y});
      }
    }
    return new ConvexRing(kept);
  }

  double mostOf(DoubleBinaryOperator figure) {
    return corners.stream().mapToDouble(c -> figure.applyAsDouble(c[0], c[1])).max().orElse(0);
  }

  /** The farthest that a point lies outside the line of any side; negative within. */
  double outside(double x, double y) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      double[] normal = normal(i);
      double[] a = corners.get(i);
      most = Math.max(most, normal[0] * (x - a[0]) + normal[1] * (y - a[1]));
    }
    return most;
  }

  /** The distance from a point to the ring; 0 within. */
  double distanceTo(double x, double y) {
    if (corners.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    if (corners.size() > 2 && outside(x, y) <= 0) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      least = Math.min(least, toSide(corners.get(i), corners.get((i + 1) % corners.size()), x, y));
    }
    return least;
  }

  private static double toSide(double[] a, double[] b, double x, double y) {
    double dx = b[0] - a[0];
    double dy = b[1] - a[1];
    double square = dx * dx + dy * dy;
    double share = square == 0 ? 0 : ((x - a[0]) * dx + (y - a[1]) * dy) / square;
    double along = Math.max(0, Math.min(1, share));
    return Math.hypot(x - a[0] - along * dx, y - a[1] - along * dy);
  }

  /** How deep the two overlap along the best line between them; negative when a line parts them. */
  double overlapWith(ConvexRing other) {
    return -Math.max(gapAlongSides(other), other.gapAlongSides(this));
  }

  private double gapAlongSides(ConvexRing other) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      double[] normal = normal(i);
      double[] a = corners.get(i);
      double nearest = -other.mostOf((x, y) -> -(normal[0] * (x - a[0]) + normal[1] * (y - a[1])));
      most = Math.max(most, nearest);
    }
    return most;
  }

  double[] centroid() {
    double twiceArea = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < corners.size(); i++) {
      double[] a = corners.get(i);
      double[] b = corners.get((i + 1) % corners.size());
      double part = a[0] * b[1] - b[0] * a[1];
      twiceArea += part;
      x += part * (a[0] + b[0]);
      y += part * (a[1] + b[1]);
    }
    return new double[] {x / (3 * twiceArea), y / (3 * twiceArea)};
  }

  private double[] normal(int side) {
    double[] a = corners.get(side);
    double[] b = corners.get((side + 1) % corners.size());
    double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    // Two corners on one spot make no side.
    return length == 0
        ? new double[] {0, 0}
        : new double[] {(b[1] - a[1]) / length, (a[0] - b[0]) / length};
  }

  private static double cross(double[] o, double[] a, double[] b) {
    return (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
  }
}
