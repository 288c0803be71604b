package shelfful.geometry;

/**
 * The points of an ellipse nearest to and farthest from a given point.
 *
 * <p>With half axes a >= b and the point at (y0, y1) in the ellipse's first quadrant, the nearest
 * point is (a² y0 / (s + a² - b²), b² y1 / s) for the one s > 0 that puts it on the ellipse; the
 * farthest lies in the opposite quadrant and obeys the same equation with the axes' roles
 * exchanged. The equation is convex and falling in s, so Newton's method from the left of its root
 * climbs to it without a miss (the form of D. Eberly, "Distance from a point to an ellipse", 2013,
 * shifted to keep digits near the axes).
 */
final class EllipsePoint {
  private static final int MOST_STEPS = 60;

  private EllipsePoint() {}

  /** Solves (p / (s + k))² + (q / s)² = 1 for s > 0, where p, k >= 0 and q > 0. */
  static double root(double p, double q, double k) {
    double s = Math.max(q, p - k);
    for (int step = 0; step < MOST_STEPS; step++) {
      double left = p / (s + k);
      double right = q / s;
      double excess = left * left + right * right - 1;
      double slope = 2 * (left * left / (s + k) + right * right / s);
      double next = s + excess / slope;
      if (!(next > s * (1 + Tolerance.ROOT))) {
        return s;
      }
      s = next;
    }
    return s;
  }

  /** Writes the direction from the ellipse to the point, outward, into the contact. */
  static void nearest(Contour e, double px, double py, Contact out) {
    double dx = px - e.x;
    double dy = py - e.y;
    double along = dx * e.axisX + dy * e.axisY;
    double across = dy * e.axisX - dx * e.axisY;
    double y0 = Math.abs(along);
    double y1 = Math.abs(across);
    double k = e.length2 - e.width2;
    double nx;
    double ny;
    if (e.halfWidth * y1 > 0) {
      double s = root(e.halfLength * y0, e.halfWidth * y1, k);
      nx = y0 / (s + k);
      ny = y1 / s;
    } else if (e.halfLength * y0 < k) {
      double share = e.halfLength * y0 / k;
      nx = share / e.halfLength;
      ny = Math.sqrt(1 - share * share) / e.halfWidth;
    } else {
      nx = 1;
      ny = 0;
    }
    turnBack(e, along < 0 ? -nx : nx, across < 0 ? -ny : ny, out);
  }

  /**
   * Writes the direction from a centre to the core's farthest point into the contact and returns
   * that farthest distance. Flat cores are allowed.
   */
  static double farthest(Contour e, double centreX, double centreY, Contact out) {
    double dx = e.x - centreX;
    double dy = e.y - centreY;
    if (e.isPoint()) {
      return direct(dx, dy, out);
    }
    double along = dx * e.axisX + dy * e.axisY;
    double across = dy * e.axisX - dx * e.axisY;
    double y0 = Math.abs(along);
    double y1 = Math.abs(across);
    double k = e.length2 - e.width2;
    double x0;
    double x1;
    if (e.halfLength * y0 > 0) {
      double s = root(e.halfWidth * y1, e.halfLength * y0, k);
      x0 = e.length2 * y0 / s;
      x1 = e.width2 * y1 / (s + k);
    } else if (e.halfWidth * y1 < k) {
      double share = e.halfWidth * y1 / k;
      x0 = e.halfLength * Math.sqrt(1 - share * share);
      x1 = e.halfWidth * share;
    } else {
      x0 = 0;
      x1 = e.halfWidth;
    }
    double farAlong = along + (along < 0 ? -x0 : x0);
    double farAcross = across + (across < 0 ? -x1 : x1);
    return direct(
        farAlong * e.axisX - farAcross * e.axisY, farAlong * e.axisY + farAcross * e.axisX, out);
  }

  private static double direct(double dx, double dy, Contact out) {
    double distance = Math.sqrt(dx * dx + dy * dy);
    boolean none = distance < Tolerance.NO_LENGTH;
    out.ux = none ? 1 : dx / distance;
    out.uy = none ? 0 : dy / distance;
    return distance;
  }

  private static void turnBack(Contour e, double nx, double ny, Contact out) {
    double length = Math.sqrt(nx * nx + ny * ny);
    out.ux = (nx * e.axisX - ny * e.axisY) / length;
    out.uy = (nx * e.axisY + ny * e.axisX) / length;
  }
}
