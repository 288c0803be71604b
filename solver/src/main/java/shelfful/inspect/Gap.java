package shelfful.inspect;

/**
 * The distance between two footprints; below zero where they overlap, by how far they would have to
 * be moved (for crossing bars: at least so far).
 *
 * <p>Two discs are compared in whole numbers. Discs and bars have a closed formula. Everything else
 * rests on duality: in every direction u, what the second footprint leaves over the first is no
 * more than the distance, and in the best direction it is the distance; so one direction proves
 * that two things are clear of each other.
 */
final class Gap {
  private Gap() {}

  /** The distance, read until it is certainly at least {@code enough} or as finely as can be. */
  static Reading between(Footprint one, Footprint other, double enough) {
    if (one instanceof Disc a && other instanceof Disc b) {
      return new Reading(discs(a, b), true);
    }
    double radii = one.radius() + other.radius();
    if (isRodLike(one) && isRodLike(other)) {
      return new Reading(lineOf(one).lineDistance(lineOf(other)) - radii, false);
    }
    return new Reading(search(one, other).untilLow(enough + radii).low() - radii, false);
  }

  /** Whether the distance is at least the required one. */
  static boolean isAtLeast(Footprint one, Footprint other, long required) {
    Vector apart = other.middle().minus(one.middle());
    if (apart.length() - one.reach() - other.reach() > required + 2 * Reading.TOLERANCE) {
      return true;
    }
    if (isRodLike(one) && isRodLike(other)) {
      return between(one, other, required).reaches(required);
    }
    double radii = one.radius() + other.radius();
    double enough = required + radii - Reading.TOLERANCE;
    return search(one, other).decide(enough).low() >= enough;
  }

  /**
   * Rounded down to half a doubled micrometre, which no whole requirement can tell from the true
   * distance.
   */
  private static double discs(Disc one, Disc other) {
    long distance = WholeRoot.floor(one.doubledDistanceSquared(other));
    return Math.floorDiv(distance - one.diameter() - other.diameter(), 2L);
  }

  static boolean isRodLike(Footprint footprint) {
    return footprint instanceof Disc || footprint instanceof Bar;
  }

  static Bar lineOf(Footprint footprint) {
    return footprint instanceof Bar bar
        ? bar
        : new Bar(footprint.middle(), footprint.middle(), footprint.radius());
  }

  static ArcSearch search(Footprint one, Footprint other) {
    return new ArcSearch(new Separation(one, other), other.middle().minus(one.middle()));
  }

  /** How far the second core lies beyond the first in a direction. */
  private record Separation(Footprint one, Footprint other) implements ArcSearch.Question {
    @Override
    public ArcSearch.Touch touch(Vector direction) {
      Vector first = one.farthest(direction);
      Vector second = other.farthest(direction.times(-1));
      return new ArcSearch.Touch(direction, first, second, direction.dot(second.minus(first)));
    }

    @Override
    public Vector[] above(ArcSearch.Touch start, ArcSearch.Touch end) {
      return new Vector[] {start.second().minus(start.first()), end.second().minus(end.first())};
    }
  }
}
