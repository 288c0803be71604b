package shelfful.inspect;

import java.util.PriorityQueue;

/**
 * The largest value over all directions of a figure that can be bounded on arcs of directions, with
 * proof on both sides: {@link #low()} is reached in a direction tried, {@link #high()} is exceeded
 * in none.
 *
 * <p>On an arc between two tried directions the figure {@code f(u)} is at most the smaller of
 * {@code u·a} and {@code u·b} for the two vectors that {@link Question#above} names. The arc with
 * the highest bound is split until both sides meet. For smooth outlines the bounds close
 * quadratically, for straight edges in a few steps.
 */
final class ArcSearch {
  /**
   * Both sides have met when they are this close, in micrometres: a tenth of what a length can say.
   */
  private static final double RESOLUTION = 0.1;

  private static final int FIRST_ARCS = 8;
  private static final double EIGHTH = Math.sqrt(0.5);

  /** Far more than any outline needs; when they are used up the bounds are wide, but true. */
  private static final int MOST_SPLITS = 4000;

  private final Question question;
  private final PriorityQueue<Arc> open =
      new PriorityQueue<>((one, other) -> Double.compare(other.high, one.high));
  private double low = Double.NEGATIVE_INFINITY;
  private Touch best;

  /** What is asked of every direction. */
  interface Question {
    /** The figure in one direction, and what bounds are made of. */
    Touch touch(Vector direction);

    /**
     * Two vectors a and b: between the two directions the figure is at most the smaller of u·a and
     * u·b.
     */
    Vector[] above(Touch one, Touch other);
  }

  /**
   * What a direction tried gave.
   *
   * @param direction unit vector
   * @param first point that the first footprint reaches to in that direction
   * @param second point that the second one reaches to
   * @param value of the figure
   */
  record Touch(Vector direction, Vector first, Vector second, double value) {}

  private record Arc(Touch start, Touch end, double high, Vector peak) {}

  ArcSearch(Question question, Vector start) {
    this.question = question;
    Vector direction = start.length() > 0 ? start.unit() : new Vector(1, 0);
    Vector eighth = new Vector(EIGHTH, EIGHTH);
    Touch first = question.touch(direction);
    Touch previous = first;
    note(first);
    for (int i = 1; i <= FIRST_ARCS; i++) {
      direction = direction.turnedWith(eighth);
      Touch next = i == FIRST_ARCS ? first : question.touch(direction.unit());
      note(next);
      add(previous, next);
      previous = next;
    }
  }

  /**
   * Searches until the largest value is certainly at least {@code enough}, certainly below it, or
   * found.
   */
  ArcSearch decide(double enough) {
    return search(enough, enough);
  }

  /** Searches until the largest value is certainly at least {@code enough}, or found. */
  ArcSearch untilLow(double enough) {
    return search(enough, Double.NEGATIVE_INFINITY);
  }

  /** Searches until the largest value is certainly at most {@code most}, or found. */
  ArcSearch untilHigh(double most) {
    return search(Double.POSITIVE_INFINITY, Math.nextUp(most));
  }

  double low() {
    return low;
  }

  double high() {
    return open.isEmpty() ? low : Math.max(low, open.peek().high);
  }

  private ArcSearch search(double enough, double tooLittle) {
    int splits = 0;
    while (low < enough && high() >= tooLittle && high() - low > RESOLUTION) {
      if (++splits > MOST_SPLITS) {
        return this;
      }
      Arc arc = open.poll();
      Touch middle = question.touch(splitOf(arc));
      note(middle);
      add(arc.start, middle);
      add(middle, arc.end);
    }
    return this;
  }

  /** The direction tried that gave the largest value so far. */
  Touch best() {
    return best;
  }

  private void note(Touch touch) {
    if (touch.value() > low) {
      low = touch.value();
      best = touch;
    }
  }

  private void add(Touch start, Touch end) {
    Vector[] above = question.above(start, end);
    Vector peak = start.direction();
    double high = Double.NEGATIVE_INFINITY;
    for (Vector candidate : candidates(start.direction(), end.direction(), above)) {
      double value = Math.min(candidate.dot(above[0]), candidate.dot(above[1]));
      if (value > high) {
        high = value;
        peak = candidate;
      }
    }
    if (high > low) {
      open.add(new Arc(start, end, high, peak));
    }
  }

  /**
   * The smaller of two cosines is largest at an end, at the peak of either, or where they cross.
   */
  private static Vector[] candidates(Vector start, Vector end, Vector[] above) {
    Vector crossing = above[0].minus(above[1]).quarterTurned();
    Vector[] all = {start, end, above[0], above[1], crossing, crossing.times(-1)};
    for (int i = 2; i < all.length; i++) {
      boolean inside = all[i].length() > 0 && start.cross(all[i]) > 0 && all[i].cross(end) > 0;
      all[i] = inside ? all[i].unit() : start;
    }
    return all;
  }

  private static Vector splitOf(Arc arc) {
    Vector start = arc.start.direction();
    Vector end = arc.end.direction();
    double width = start.cross(end);
    boolean wellInside = start.cross(arc.peak) > width / 8 && arc.peak.cross(end) > width / 8;
    return wellInside ? arc.peak : start.plus(end).unit();
  }
}
