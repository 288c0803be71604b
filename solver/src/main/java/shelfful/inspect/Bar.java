package shelfful.inspect;

/** A straight bar with round ends: everything within a radius of a line. */
record Bar(Vector from, Vector to, double radius) implements Footprint {

  @Override
  public Vector farthest(Vector direction) {
    return from.dot(direction) >= to.dot(direction) ? from : to;
  }

  @Override
  public Vector middle() {
    return from.plus(to).times(0.5);
  }

  @Override
  public double reach() {
    return from.minus(to).length() / 2 + radius;
  }

  /** The distance between the middle lines of two bars, 0 when they cross. */
  double lineDistance(Bar other) {
    if (crosses(other)) {
      return 0;
    }
    return Math.min(
        Math.min(distanceFrom(other.from), distanceFrom(other.to)),
        Math.min(other.distanceFrom(from), other.distanceFrom(to)));
  }

  private boolean crosses(Bar other) {
    Vector along = to.minus(from);
    Vector otherAlong = other.to.minus(other.from);
    double sideOfFrom = along.cross(other.from.minus(from));
    double sideOfTo = along.cross(other.to.minus(from));
    double otherSideOfFrom = otherAlong.cross(from.minus(other.from));
    double otherSideOfTo = otherAlong.cross(to.minus(other.from));
    return sideOfFrom * sideOfTo < 0 && otherSideOfFrom * otherSideOfTo < 0;
  }

  private double distanceFrom(Vector point) {
    Vector along = to.minus(from);
    double square = along.dot(along);
    if (square == 0) {
      return point.minus(from).length();
    }
    double share = Math.max(0, Math.min(1, point.minus(from).dot(along) / square));
    return point.minus(from.plus(along.times(share))).length();
  }
}
