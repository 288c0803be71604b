package shelfful.bound;

/** Distances of straight lines between two points. */
final class Segments {
  private Segments() {}

  /** The distance of two segments, 0 when they cross. */
  static double distance(double[] a, double[] b, double[] c, double[] d) {
    if (cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0) {
      return 0;
    }
    double one = Math.min(distance(a, c, d), distance(b, c, d));
    return Math.min(one, Math.min(distance(c, a, b), distance(d, a, b)));
  }

  private static double cross(double[] a, double[] b, double[] c) {
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  }

  private static double distance(double[] point, double[] from, double[] to) {
    double dx = to[0] - from[0];
    double dy = to[1] - from[1];
    double square = dx * dx + dy * dy;
    double share =
        square == 0 ? 0 : ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / square;
    double within = Math.max(0, Math.min(1, share));
    return Math.hypot(from[0] + within * dx - point[0], from[1] + within * dy - point[1]);
  }
}
