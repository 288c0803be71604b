package shelfful.inspect;

import shelfful.measure.Length;
import shelfful.measure.Point;

/** A disc in whole micrometres, so that two of them can be compared without any rounding. */
record Disc(long x, long y, long diameter) implements Footprint {

  static Disc at(Point middle, Length diameter) {
    return new Disc(middle.x().micrometres(), middle.y().micrometres(), diameter.micrometres());
  }

  @Override
  public Vector farthest(Vector direction) {
    return middle();
  }

  @Override
  public double radius() {
    return diameter / 2.0;
  }

  @Override
  public Vector middle() {
    return new Vector(x, y);
  }

  @Override
  public double reach() {
    return radius();
  }

  /** The square of twice the distance between two middles; whole, so nothing is rounded. */
  long doubledDistanceSquared(Disc other) {
    long acrossTwice = 2 * (x - other.x);
    long alongTwice = 2 * (y - other.y);
    return acrossTwice * acrossTwice + alongTwice * alongTwice;
  }
}
