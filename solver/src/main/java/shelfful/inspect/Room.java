package shelfful.inspect;

import java.util.List;
import java.util.Optional;

/**
 * A convex part of the plan that things have to lie in: inside of every straight edge and of the
 * round one.
 *
 * @param walls straight edges, may be none
 * @param round a disc or an ellipse that is a limit too
 */
record Room(List<Wall> walls, Optional<Footprint> round) {

  /**
   * How far the whole body lies inside of every edge; below zero when part of it is outside. Read
   * until it is certainly at least {@code enough} or as finely as can be.
   */
  Reading depth(Footprint body, double enough) {
    Reading least = Reading.UNLIMITED;
    for (Wall wall : walls) {
      least = least.orLess(wall.depth(body));
    }
    return round.isPresent() ? least.orLess(roundDepth(body, round.get(), enough)) : least;
  }

  /** Whether the whole body lies at least so far inside of every edge. */
  boolean holds(Footprint body, long clearance) {
    return depth(body, clearance).reaches(clearance);
  }

  static Reading roundDepth(Footprint body, Footprint round, double enough) {
    if (round instanceof Disc edge && body instanceof Disc disc) {
      long distance = WholeRoot.ceiling(edge.doubledDistanceSquared(disc));
      return new Reading(Math.floorDiv(edge.diameter() - disc.diameter() - distance, 2L), true);
    }
    double slack = round.radius() - body.radius();
    if (round instanceof Disc edge && body instanceof Bar bar) {
      double farther =
          Math.max(
              bar.from().minus(edge.middle()).length(), bar.to().minus(edge.middle()).length());
      return new Reading(slack - farther, false);
    }
    Vector start = body.middle().minus(round.middle());
    ArcSearch search = new ArcSearch(new Excess(body, round), start);
    return new Reading(slack - search.untilHigh(slack - enough).high(), false);
  }

  /** The direction in which a body comes closest to a round edge round it. */
  static Vector nearestWay(Footprint body, Footprint round) {
    Vector start = body.middle().minus(round.middle());
    if (round instanceof Disc edge && body instanceof Bar bar) {
      Vector from = bar.from().minus(edge.middle());
      Vector to = bar.to().minus(edge.middle());
      start = from.length() >= to.length() ? from : to;
    } else if (!(round instanceof Disc && body instanceof Disc)) {
      return new ArcSearch(new Excess(body, round), start)
          .untilHigh(Double.NEGATIVE_INFINITY)
          .best()
          .direction();
    }
    return start.length() > 0 ? start.unit() : new Vector(1, 0);
  }

  /** How far the body's core reaches past the round edge's core in a direction. */
  private record Excess(Footprint body, Footprint round) implements ArcSearch.Question {
    @Override
    public ArcSearch.Touch touch(Vector direction) {
      Vector first = body.farthest(direction);
      Vector second = round.farthest(direction);
      return new ArcSearch.Touch(direction, first, second, direction.dot(first.minus(second)));
    }

    /** Between two directions the body stays behind the corner where its two tangents meet. */
    @Override
    public Vector[] above(ArcSearch.Touch start, ArcSearch.Touch end) {
      Vector corner = corner(start, end);
      return new Vector[] {corner.minus(start.second()), corner.minus(end.second())};
    }

    private static Vector corner(ArcSearch.Touch start, ArcSearch.Touch end) {
      if (start.first().equals(end.first())) {
        return start.first();
      }
      Vector along = start.direction().quarterTurned();
      double way = end.direction().dot(end.first().minus(start.first()));
      return start.first().plus(along.times(way / end.direction().dot(along)));
    }
  }
}
