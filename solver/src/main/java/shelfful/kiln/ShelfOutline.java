package shelfful.kiln;

import shelfful.measure.Length;

/**
 * A shelf seen from above, in its own frame: the origin is the centre of the full disc, polygon or
 * rectangle that it is, or was cut from.
 */
public sealed interface ShelfOutline {

  /** Its area in square millimetres; what a saw cut takes is not left out. */
  double squareMillimetres();

  /** A full disc. */
  record FullRound(Length diameter) implements ShelfOutline {
    /** Refuses a diameter that is not positive. */
    public FullRound {
      requirePositive(diameter);
    }

    @Override
    public double squareMillimetres() {
      return disc(diameter);
    }
  }

  /**
   * Half a disc: the part with y of at least half the saw cut.
   *
   * @param diameter of the full disc
   * @param sawCut between the two straight edges when both halves lie around one centre
   */
  record HalfRound(Length diameter, Length sawCut) implements ShelfOutline {
    /** Refuses a diameter that is not positive and a cut as wide as the disc. */
    public HalfRound {
      requireCut(diameter, sawCut);
    }

    @Override
    public double squareMillimetres() {
      return disc(diameter) / 2;
    }
  }

  /** A quarter of a disc: the part with x and y of at least half the saw cut. */
  record QuarterRound(Length diameter, Length sawCut) implements ShelfOutline {
    /** Refuses a diameter that is not positive and a cut as wide as the disc. */
    public QuarterRound {
      requireCut(diameter, sawCut);
    }

    @Override
    public double squareMillimetres() {
      return disc(diameter) / 4;
    }
  }

  /**
   * A regular polygon with a flat side at the bottom (towards −y).
   *
   * @param sides 5 to 24
   * @param acrossFlats twice the distance from the centre to a side
   */
  record Polygon(int sides, Length acrossFlats) implements ShelfOutline {
    /** Refuses sides out of range and a size that is not positive. */
    public Polygon {
      requireSides(sides);
      requirePositive(acrossFlats);
    }

    @Override
    public double squareMillimetres() {
      return polygon(sides, acrossFlats);
    }
  }

  /** Half of such a polygon: the part with y of at least half the saw cut. */
  record HalfPolygon(int sides, Length acrossFlats, Length sawCut) implements ShelfOutline {
    /** Refuses sides out of range, a size that is not positive and a cut as wide as the shelf. */
    public HalfPolygon {
      requireSides(sides);
      requireCut(acrossFlats, sawCut);
    }

    @Override
    public double squareMillimetres() {
      return polygon(sides, acrossFlats) / 2;
    }
  }

  /** A rectangle with its sides along x and y. */
  record Rectangle(Length width, Length depth) implements ShelfOutline {
    /** Refuses sides that are not positive. */
    public Rectangle {
      requirePositive(width);
      requirePositive(depth);
    }

    @Override
    public double squareMillimetres() {
      return width.millimetres() * depth.millimetres();
    }
  }

  private static void requirePositive(Length length) {
    if (!length.isPositive()) {
      throw new IllegalArgumentException("A shelf must be larger than 0 in every direction");
    }
  }

  private static void requireCut(Length size, Length sawCut) {
    requirePositive(size);
    if (sawCut.micrometres() < 0 || !size.isLongerThan(sawCut)) {
      throw new IllegalArgumentException(
          "A saw cut must be at least 0 and narrower than the shelf, not " + sawCut);
    }
  }

  private static void requireSides(int sides) {
    if (sides < 5 || sides > 24) {
      throw new IllegalArgumentException("A polygon must have 5 to 24 sides, not " + sides);
    }
  }

  private static double disc(Length diameter) {
    return Math.PI / 4 * square(diameter.millimetres());
  }

  /** A regular n-gon of width d across flats has area n (d/2)² tan(π/n). */
  private static double polygon(int sides, Length acrossFlats) {
    return sides * square(acrossFlats.millimetres() / 2) * Math.tan(Math.PI / sides);
  }

  private static double square(double value) {
    return value * value;
  }
}
