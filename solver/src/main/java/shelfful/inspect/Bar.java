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

  /**
   * The points of the two middle lines that are nearest to each other; one point when they cross.
   */
  Vector[] nearest(Bar other) {
    if (crosses(other)) {
      Vector along = to.minus(from);
      Vector otherAlong = other.to.minus(other.from);
      double share = other.from.minus(from).cross(otherAlong) / along.cross(otherAlong);
      Vector meeting = from.plus(along.times(share));
      return new Vector[] {meeting, meeting};
    }
    Vector[][] ends = {
      {from, other.nearestTo(from)},
      {to, other.nearestTo(to)},
      {nearestTo(other.from), other.from},
      {nearestTo(other.to), other.to}
    };
    Vector[] least = ends[0];
    for (Vector[] pair : ends) {
      if (pair[1].minus(pair[0]).length() < least[1].minus(least[0]).length()) {
        least = pair;
      }
    }
    return least;
  }

  private double distanceFrom(Vector point) {
    return point.minus(nearestTo(point)).length();
  }

  /** The point of the middle line that is nearest to a point. */
  Vector nearestTo(Vector point) {
    Vector along = to.minus(from);
    double square = along.dot(along);
    if (square == 0) {
      return from;
    }
    double share = Math.max(0, Math.min(1, point.minus(from).dot(along) / square));
    return from.plus(along.times(share));
  }
}
