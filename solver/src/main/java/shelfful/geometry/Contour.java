package shelfful.geometry;

/**
 * A {@link Shape} standing somewhere in the plane, made for inner loops: an ellipse core (possibly
 * flattened to a segment or a point) grown by a radius, moved in place without allocation.
 */
public final class Contour {
  private final double localX;
  private final double localY;
  private final double localCos;
  private final double localSin;

  final double halfLength;
  final double halfWidth;
  final double radius;
  final double length2;
  final double width2;

  double originX;
  double originY;
  double x;
  double y;
  double axisX;
  double axisY;

  /** The longer half axis comes first, so that the nearest-point formulas need no cases. */
  private Contour(Oval core, double radius) {
    boolean swap = core.halfWidth() > core.halfLength();
    double angle = swap ? core.angle() + Math.PI / 2 : core.angle();
    this.localX = core.x();
    this.localY = core.y();
    this.localCos = Math.cos(angle);
    this.localSin = Math.sin(angle);
    this.halfLength = Math.max(core.halfLength(), core.halfWidth());
    this.halfWidth = Math.min(core.halfLength(), core.halfWidth());
    this.radius = radius;
    this.length2 = halfLength * halfLength;
    this.width2 = halfWidth * halfWidth;
    place(0, 0, 1, 0);
  }

  private Contour(Capsule capsule) {
    double spine = capsule.spine();
    boolean point = spine < Tolerance.NO_LENGTH;
    this.localX = capsule.centreX();
    this.localY = capsule.centreY();
    this.localCos = point ? 1 : (capsule.x2() - capsule.x1()) / spine;
    this.localSin = point ? 0 : (capsule.y2() - capsule.y1()) / spine;
    this.halfLength = point ? 0 : spine / 2;
    this.halfWidth = 0;
    this.radius = capsule.radius();
    this.length2 = halfLength * halfLength;
    this.width2 = 0;
    place(0, 0, 1, 0);
  }

  /** The contour of a shape, standing at the frame's origin. */
  public static Contour of(Shape shape) {
    if (shape instanceof Oval oval) {
      return new Contour(oval, 0);
    }
    if (shape instanceof Capsule capsule) {
      return new Contour(capsule);
    }
    Disc disc = (Disc) shape;
    return new Contour(new Capsule(disc.x(), disc.y(), disc.x(), disc.y(), disc.radius()));
  }

  /** The contour of a shape at a pose. */
  public static Contour of(Shape shape, Pose pose) {
    Contour contour = of(shape);
    contour.place(pose.x(), pose.y(), Math.cos(pose.angle()), Math.sin(pose.angle()));
    return contour;
  }

  static Contour of(OvalBound b) {
    return new Contour(new Oval(b.x(), b.y(), b.halfLength(), b.halfWidth(), b.angle()), 0);
  }

  /** Stands the body's origin at a point, its frame turned by the angle of that cosine and sine. */
  public void place(double atX, double atY, double cos, double sin) {
    originX = atX;
    originY = atY;
    x = atX + cos * localX - sin * localY;
    y = atY + sin * localX + cos * localY;
    axisX = cos * localCos - sin * localSin;
    axisY = sin * localCos + cos * localSin;
  }

  /** Where the centre of symmetry now is, mm. */
  public double x() {
    return x;
  }

  /** Where the centre of symmetry now is, mm. */
  public double y() {
    return y;
  }

  /** How far the outline reaches from its centre of symmetry, mm. */
  public double outerRadius() {
    return halfLength + radius;
  }

  /** Whether the circles round two contours are at least a limit apart: then so are they. */
  public boolean isFarFrom(Contour other, double limit) {
    double dx = other.x - x;
    double dy = other.y - y;
    double reach = halfLength + radius + other.halfLength + other.radius + limit;
    return dx * dx + dy * dy >= reach * reach;
  }

  boolean isPoint() {
    return halfLength == 0;
  }

  boolean isFlat() {
    return halfWidth == 0;
  }

  /** Support function of the core about its own centre. */
  double core(double ux, double uy) {
    double along = ux * axisX + uy * axisY;
    double across = uy * axisX - ux * axisY;
    return Math.sqrt(length2 * along * along + width2 * across * across);
  }

  /** Moment about the body's origin of u acting at the support point in direction sign * u. */
  double arm(double ux, double uy, double sign) {
    double lever = (x - originX) * uy - (y - originY) * ux;
    if (isPoint()) {
      return lever;
    }
    double along = ux * axisX + uy * axisY;
    double across = uy * axisX - ux * axisY;
    double support = Math.sqrt(length2 * along * along + width2 * across * across);
    double turn = support == 0 ? 0 : (length2 - width2) * along * across / support;
    return lever + sign * turn;
  }
}
