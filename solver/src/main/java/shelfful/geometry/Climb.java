package shelfful.geometry;

/**
 * Climbs to a local maximum over unit directions u of F(u) = d.u + s hA(u) - hB(u) - r, where h are
 * the support functions of two ellipse cores about their centres. With s = -1 and d from a to b
 * this is the signed gap of two bodies; with s = +1 and d from wall to body, minus the gap inside
 * an oval wall.
 *
 * <p>Newton's method on the angle, held to an ascent by halving. An ellipse's support function has
 * h + h'' = (ab)²/h³ (its radius of curvature), which gives the second derivative for free.
 */
final class Climb {
  private static final int MOST_STEPS = 60;
  private static final double LONGEST_STEP = 0.6;
  private static final double BLIND_STEP = 0.3;

  private final Contour a;
  private final Contour b;
  private final double dx;
  private final double dy;
  private final double sign;

  private double slope;
  private double bend;

  private Climb(Contour a, Contour b, double sign) {
    this.a = a;
    this.b = b;
    this.sign = sign;
    this.dx = sign * (a.x - b.x);
    this.dy = sign * (a.y - b.y);
  }

  /** The climb for the gap between two bodies, in directions from a to b. */
  static Climb between(Contour a, Contour b) {
    return new Climb(a, b, -1);
  }

  /** The climb for a body a inside a wall b; its maximum is minus the gap. */
  static Climb inside(Contour a, Contour wall) {
    return new Climb(a, wall, 1);
  }

  /** F(u), with its first and second derivative by angle left in the fields. */
  private double at(double ux, double uy) {
    double alongA = ux * a.axisX + uy * a.axisY;
    double acrossA = uy * a.axisX - ux * a.axisY;
    double hA = Math.sqrt(a.length2 * alongA * alongA + a.width2 * acrossA * acrossA);
    double alongB = ux * b.axisX + uy * b.axisY;
    double acrossB = uy * b.axisX - ux * b.axisY;
    double hB = Math.sqrt(b.length2 * alongB * alongB + b.width2 * acrossB * acrossB);
    double line = dx * ux + dy * uy;
    double turnA = (a.width2 - a.length2) * alongA * acrossA / hA;
    double turnB = (b.width2 - b.length2) * alongB * acrossB / hB;
    double curveA = a.length2 * a.width2 / (hA * hA * hA);
    double curveB = b.length2 * b.width2 / (hB * hB * hB);
    slope = dy * ux - dx * uy + sign * turnA - turnB;
    bend = -line + sign * (curveA - hA) - (curveB - hB);
    return line + sign * hA - hB;
  }

  /** F(u) alone. */
  double value(double ux, double uy) {
    return dx * ux + dy * uy + sign * a.core(ux, uy) - b.core(ux, uy);
  }

  /**
   * Climbs from the contact's direction, leaving the better direction and F there (radii not taken
   * off). Stops early once F reaches the limit.
   */
  void from(Contact out, double limit) {
    double baseX = out.ux;
    double baseY = out.uy;
    double best = at(baseX, baseY);
    double step = newtonStep();
    for (int i = 0; i < MOST_STEPS && best < limit && Math.abs(step) > Tolerance.DIRECTION; i++) {
      double ux = baseX - step * baseY;
      double uy = baseY + step * baseX;
      double length = Math.sqrt(ux * ux + uy * uy);
      ux /= length;
      uy /= length;
      double next = at(ux, uy);
      if (next >= best) {
        best = next;
        baseX = ux;
        baseY = uy;
        step = newtonStep();
      } else {
        step /= 2;
      }
    }
    out.ux = baseX;
    out.uy = baseY;
    out.gap = best;
  }

  private double newtonStep() {
    if (bend < 0) {
      return Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, -slope / bend));
    }
    return slope < 0 ? -BLIND_STEP : BLIND_STEP;
  }
}
