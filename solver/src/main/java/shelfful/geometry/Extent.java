package shelfful.geometry;

/**
 * How large a convex set is at most: each figure is exact or an upper bound. All zero for an empty
 * set, all infinite for an unbounded one.
 *
 * @param area mm²
 * @param perimeter mm
 * @param diameter greatest distance of two of its points, mm
 * @param empty whether it is certain that the set has no point
 */
public record Extent(double area, double perimeter, double diameter, boolean empty) {
  /** The extent of the empty set. */
  public static final Extent NONE = new Extent(0, 0, 0, true);

  static Extent ofDisc(double radius) {
    return radius < 0
        ? NONE
        : new Extent(Math.PI * radius * radius, 2 * Math.PI * radius, 2 * radius, false);
  }

  /**
   * The extent of this set grown by a distance on all sides (Steiner: A + P t + pi t², P + 2 pi t).
   */
  public Extent grownBy(double distance) {
    return empty
        ? NONE
        : new Extent(
            area + perimeter * distance + Math.PI * distance * distance,
            perimeter + 2 * Math.PI * distance,
            diameter + 2 * distance,
            false);
  }

  /** The smaller of both figures in each place: both bound the same set. Null bounds nothing. */
  public Extent and(Extent other) {
    if (other == null) {
      return this;
    }
    return empty || other.empty
        ? NONE
        : new Extent(
            Math.min(area, other.area),
            Math.min(perimeter, other.perimeter),
            Math.min(diameter, other.diameter),
            false);
  }
}
