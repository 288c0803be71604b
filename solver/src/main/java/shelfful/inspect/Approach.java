package shelfful.inspect;

/**
 * Where two things come closest, or a body and the edge it must stay inside of.
 *
 * @param distance as the judge reads it, below zero where they overlap
 * @param from the place on the first
 * @param to the place on the other
 * @param away unit vector in which the first has to move for the distance to grow fastest
 */
record Approach(Reading distance, Vector from, Vector to, Vector away) {
  private static final Vector ANY = new Vector(1, 0);

  /** Where two footprints come closest, read as finely as can be. */
  static Approach between(Footprint one, Footprint other) {
    Reading distance = Gap.between(one, other, Double.POSITIVE_INFINITY);
    if (one instanceof Disc && other instanceof Disc) {
      return along(distance, one, other, unit(other.middle().minus(one.middle())));
    }
    if (Gap.isRodLike(one) && Gap.isRodLike(other)) {
      Vector[] nearest = Gap.lineOf(one).nearest(Gap.lineOf(other));
      Vector out = unit(nearest[1].minus(nearest[0]));
      return new Approach(
          distance,
          nearest[0].plus(out.times(one.radius())),
          nearest[1].minus(out.times(other.radius())),
          out.times(-1));
    }
    return along(
        distance,
        one,
        other,
        Gap.search(one, other).untilLow(Double.POSITIVE_INFINITY).best().direction());
  }

  /**
   * What is round has one farthest point, and the other's nearest lies straight across from it; of
   * a straight side any point would be as far.
   */
  private static Approach along(Reading distance, Footprint one, Footprint other, Vector out) {
    boolean fromTheOther = !isRound(one) && isRound(other);
    Vector across = out.times(distance.micrometres());
    Vector from = edge(one, out);
    Vector to = from.plus(across);
    if (fromTheOther) {
      to = edge(other, out.times(-1));
      from = to.minus(across);
    }
    return new Approach(distance, from, to, out.times(-1));
  }

  private static Vector edge(Footprint one, Vector out) {
    return one.farthest(out).plus(out.times(one.radius()));
  }

  private static boolean isRound(Footprint footprint) {
    return footprint instanceof Disc || footprint instanceof Ellipse;
  }

  /** Where a body comes closest to a straight edge. */
  static Approach to(Wall wall, Footprint body) {
    Reading depth = wall.depth(body);
    Vector from = body.farthest(wall.outwards()).plus(wall.outwards().times(body.radius()));
    Vector to = from.plus(wall.outwards().times(depth.micrometres()));
    return new Approach(depth, from, to, wall.outwards().times(-1));
  }

  /** Where a body comes closest to the round edge it must stay inside of. */
  static Approach toRound(Footprint round, Footprint body) {
    Reading depth = Room.roundDepth(body, round, Double.POSITIVE_INFINITY);
    Vector out = Room.nearestWay(body, round);
    Vector from = body.farthest(out).plus(out.times(body.radius()));
    return new Approach(depth, from, from.plus(out.times(depth.micrometres())), out.times(-1));
  }

  /** The one that stops a requirement first. */
  Approach orNearer(Approach other) {
    return distance.orLess(other.distance) == distance ? this : other;
  }

  private static Vector unit(Vector vector) {
    return vector.length() > 0 ? vector.unit() : ANY;
  }
}
