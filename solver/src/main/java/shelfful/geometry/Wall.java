package shelfful.geometry;

/**
 * A {@link Bound} made ready for inner loops: how far inside it does a contour stand?
 *
 * <p>Exact for every contour inside half-planes and discs. Inside an oval wall exact for discs and
 * capsules (the depth of a point is concave, so the ends of a segment decide); for ovals all
 * directions are looked through and every local minimum refined.
 */
public final class Wall {
  private static final int LOOK_ROUND = 48;

  private final double x;
  private final double y;
  private final double size;
  private final boolean flat;
  private final Contour oval;

  private Wall(double x, double y, double size, boolean flat, Contour oval) {
    this.x = x;
    this.y = y;
    this.size = size;
    this.flat = flat;
    this.oval = oval;
  }

  /** The wall of a bound. */
  public static Wall of(Bound bound) {
    if (bound instanceof HalfPlane plane) {
      return new Wall(plane.nx(), plane.ny(), plane.offset(), true, null);
    }
    if (bound instanceof DiscBound disc) {
      return new Wall(disc.x(), disc.y(), disc.radius(), false, null);
    }
    return new Wall(0, 0, 0, false, Contour.of((OvalBound) bound));
  }

  /**
   * The signed gap from the contour to this wall, negative where it passes it; direction and arm of
   * the contour go into the contact. At or over the limit the value may be any figure of at least
   * the limit that the true gap also reaches, and the contact is not to be used.
   */
  public double underLimit(Contour body, double limit, Contact out) {
    if (flat) {
      out.ux = x;
      out.uy = y;
      out.gap = size - x * body.x - y * body.y - body.core(x, y) - body.radius;
    } else if (oval == null) {
      out.gap = size - EllipsePoint.farthest(body, x, y, out) - body.radius;
    } else {
      inOval(body, limit, out);
    }
    if (out.gap < limit) {
      out.armA = body.arm(out.ux, out.uy, 1);
    }
    return out.gap;
  }

  /** The same for a single point. */
  public double underLimit(double px, double py, double limit, Contact out) {
    if (flat) {
      out.ux = x;
      out.uy = y;
      return size - x * px - y * py;
    }
    if (oval != null) {
      return depth(px, py, out);
    }
    double dx = px - x;
    double dy = py - y;
    double square = dx * dx + dy * dy;
    double reach = size - limit;
    if (reach > 0 && square <= reach * reach) {
      return limit;
    }
    double distance = Math.sqrt(square);
    boolean none = distance < Tolerance.NO_LENGTH;
    out.ux = none ? 1 : dx / distance;
    out.uy = none ? 0 : dy / distance;
    return size - distance;
  }

  private void inOval(Contour body, double limit, Contact out) {
    out.gap = depth(body.x, body.y, out) - body.halfLength - body.radius;
    if (body.isPoint() || out.gap >= limit) {
      return;
    }
    if (body.isFlat()) {
      double alongX = body.halfLength * body.axisX;
      double alongY = body.halfLength * body.axisY;
      double other = depth(body.x - alongX, body.y - alongY, out);
      double otherX = out.ux;
      double otherY = out.uy;
      out.gap = depth(body.x + alongX, body.y + alongY, out);
      if (other < out.gap) {
        out.gap = other;
        out.ux = otherX;
        out.uy = otherY;
      }
    } else {
      out.reset();
      Climb climb = Climb.inside(body, oval);
      Sweep.all(climb, LOOK_ROUND, out);
      climb.from(out, Double.POSITIVE_INFINITY);
      out.gap = -out.gap;
    }
    out.gap -= body.radius;
  }

  private double depth(double px, double py, Contact out) {
    EllipsePoint.nearest(oval, px, py, out);
    double line = (px - oval.x) * out.ux + (py - oval.y) * out.uy;
    return oval.core(out.ux, out.uy) - line;
  }
}
