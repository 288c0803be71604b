package shelfful.geometry;

/**
 * The signed gap between two contours, with the direction it is taken in and its rates of change.
 * Allocation-free for discs and capsules.
 *
 * <p>Discs and capsules: the core difference of two segments is a parallelogram, whose signed
 * distance is attained in the direction of a corner or across an edge, so trying those is exact.
 * Ovals: a climb in the direction angle, exact whenever the cores are apart because then the
 * maximum is the only one.
 */
public final class PairGap {
  private static final int LOOK_ROUND = 120;

  private PairGap() {}

  /**
   * Measures the gap for a search that only cares whether it is under a limit: once some direction
   * shows a gap of at least the limit, a value of at least the limit is returned at once. Under the
   * limit the contact holds the gap, direction and arms; for deeply overlapping ovals it may be a
   * local maximum, hence too small, never too large.
   */
  public static double underLimit(Contour a, Contour b, double limit, Contact out) {
    if (a.isFlat() && b.isFlat() && spines(a, b, out)) {
      if (out.gap < limit) {
        arms(a, b, out);
      }
      return out.gap;
    }
    return inAnyDirection(a, b, limit, out);
  }

  private static double inAnyDirection(Contour a, Contour b, double limit, Contact out) {
    double dx = b.x - a.x;
    double dy = b.y - a.y;
    double radii = a.radius + b.radius;
    double distance = Math.sqrt(dx * dx + dy * dy);
    boolean together = distance < Tolerance.NO_LENGTH;
    double ux = together ? 1 : dx / distance;
    double uy = together ? 0 : dy / distance;
    out.gap = distance - a.core(ux, uy) - b.core(ux, uy) - radii;
    out.ux = ux;
    out.uy = uy;
    if (out.gap < limit) {
      search(a, b, limit, out);
    }
    if (out.gap < limit) {
      arms(a, b, out);
    }
    return out.gap;
  }

  private static void arms(Contour a, Contour b, Contact out) {
    out.armA = a.arm(out.ux, out.uy, 1);
    out.armB = b.arm(out.ux, out.uy, -1);
  }

  /** The exact signed gap, overlapping bodies included. */
  public static double exactly(Contour a, Contour b, Contact out) {
    double gap = underLimit(a, b, Double.POSITIVE_INFINITY, out);
    boolean oval = !a.isFlat() || !b.isFlat();
    double radii = a.radius + b.radius;
    if (oval && gap + radii <= 0) {
      out.gap = gap + radii;
      Sweep.all(Climb.between(a, b), LOOK_ROUND, out);
      out.gap -= radii;
      arms(a, b, out);
    }
    return out.gap;
  }

  private static void search(Contour a, Contour b, double limit, Contact out) {
    if (a.isFlat() && b.isFlat()) {
      corners(a, b, out);
      offerAcross(a, b, a, out);
      offerAcross(a, b, b, out);
    } else if (b.isFlat()) {
      ends(a, b, a, b, out);
      offerAcross(a, b, b, out);
    } else if (a.isFlat()) {
      ends(b, a, a, b, out);
      offerAcross(a, b, a, out);
    } else {
      ovals(a, b, limit, out);
    }
  }

  /**
   * The gap of two spines that do not meet, by their nearest points; false when they meet. The
   * parameters of the nearest points are clamped one after the other (the usual way for two
   * segments; see for instance C. Ericson, Real-Time Collision Detection, 2005, 5.1.9).
   */
  private static boolean spines(Contour a, Contour b, Contact out) {
    double dx = a.x - b.x;
    double dy = a.y - b.y;
    if (a.isPoint() && b.isPoint()) {
      return apart(a, b, -dx, -dy, out);
    }
    double alongA = a.axisX * dx + a.axisY * dy;
    double alongB = b.axisX * dx + b.axisY * dy;
    double both = a.axisX * b.axisX + a.axisY * b.axisY;
    double slant = 1 - both * both;
    double s = 0;
    if (!a.isPoint() && !b.isPoint() && slant > Tolerance.NO_LENGTH) {
      s = clamp((both * alongB - alongA) / slant, a.halfLength);
    }
    double t = b.isPoint() ? 0 : clamp(both * s + alongB, b.halfLength);
    if (!a.isPoint()) {
      s = clamp(both * t - alongA, a.halfLength);
      t = b.isPoint() ? 0 : clamp(both * s + alongB, b.halfLength);
    }
    double gx = t * b.axisX - s * a.axisX - dx;
    double gy = t * b.axisY - s * a.axisY - dy;
    return apart(a, b, gx, gy, out);
  }

  /** The gap of two spines by the way between their nearest points; false when there is none. */
  private static boolean apart(Contour a, Contour b, double gx, double gy, Contact out) {
    double distance = Math.sqrt(gx * gx + gy * gy);
    if (distance < Tolerance.NO_LENGTH) {
      return false;
    }
    out.gap = distance - (a.radius + b.radius);
    out.ux = gx / distance;
    out.uy = gy / distance;
    return true;
  }

  private static double clamp(double value, double most) {
    return Math.max(-most, Math.min(most, value));
  }

  private static void corners(Contour a, Contour b, Contact out) {
    for (int i = a.isPoint() ? 1 : -1; i <= 1; i += 2) {
      for (int j = b.isPoint() ? 1 : -1; j <= 1; j += 2) {
        double dx = b.x - a.x + j * b.halfLength * b.axisX - i * a.halfLength * a.axisX;
        double dy = b.y - a.y + j * b.halfLength * b.axisY - i * a.halfLength * a.axisY;
        double distance = Math.sqrt(dx * dx + dy * dy);
        if (distance > Tolerance.NO_LENGTH) {
          offer(a, b, dx / distance, dy / distance, out);
        }
      }
    }
  }

  /** Tries the directions from the oval to the ends of a flat core. */
  private static void ends(Contour oval, Contour flat, Contour a, Contour b, Contact out) {
    double sign = oval == a ? 1 : -1;
    double bestX = out.ux;
    double bestY = out.uy;
    for (int i = flat.isPoint() ? 1 : -1; i <= 1; i += 2) {
      double gap = out.gap;
      double px = flat.x + i * flat.halfLength * flat.axisX;
      double py = flat.y + i * flat.halfLength * flat.axisY;
      EllipsePoint.nearest(oval, px, py, out);
      double ux = sign * out.ux;
      double uy = sign * out.uy;
      out.ux = bestX;
      out.uy = bestY;
      out.gap = gap;
      offer(a, b, ux, uy, out);
      bestX = out.ux;
      bestY = out.uy;
    }
  }

  private static void offerAcross(Contour a, Contour b, Contour flat, Contact out) {
    if (!flat.isPoint()) {
      double side = (b.y - a.y) * flat.axisX - (b.x - a.x) * flat.axisY;
      double sign = side < 0 ? -1 : 1;
      offer(a, b, -sign * flat.axisY, sign * flat.axisX, out);
    }
  }

  /** Climbs from the centre line or, if it starts better, from across either oval. */
  private static void ovals(Contour a, Contour b, double limit, Contact out) {
    double radii = a.radius + b.radius;
    offerAcross(a, b, a, out);
    offerAcross(a, b, b, out);
    if (out.gap < limit) {
      Climb.between(a, b).from(out, limit + radii);
      out.gap -= radii;
    }
  }

  private static void offer(Contour a, Contour b, double ux, double uy, Contact out) {
    double line = (b.x - a.x) * ux + (b.y - a.y) * uy;
    out.offer(line - a.core(ux, uy) - b.core(ux, uy) - a.radius - b.radius, ux, uy);
  }
}
