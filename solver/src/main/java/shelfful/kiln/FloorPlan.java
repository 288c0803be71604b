package shelfful.kiln;

import shelfful.measure.Length;

/**
 * The inside of a chamber seen from above, between the bricks or elements. Centred on the origin.
 */
public sealed interface FloorPlan {

  /** The size along x. */
  Length width();

  /** The size along y. */
  Length depth();

  /** A round chamber. */
  record Round(Length diameter) implements FloorPlan {
    /** Refuses a diameter that is not positive. */
    public Round {
      requirePositive(diameter);
    }

    @Override
    public Length width() {
      return diameter;
    }

    @Override
    public Length depth() {
      return diameter;
    }
  }

  /**
   * A regular polygon with one flat side facing the loader.
   *
   * @param sides 5 to 24
   * @param acrossFlats twice the distance from the centre to a side
   */
  record Polygon(int sides, Length acrossFlats) implements FloorPlan {
    /** Refuses fewer than 5 or more than 24 sides, and a size that is not positive. */
    public Polygon {
      requireSides(sides);
      requirePositive(acrossFlats);
    }

    @Override
    public Length width() {
      return acrossFlats;
    }

    @Override
    public Length depth() {
      return acrossFlats;
    }
  }

  /** An oval chamber with its axes along x and y. */
  record Oval(Length width, Length depth) implements FloorPlan {
    /** Refuses axes that are not positive. */
    public Oval {
      requirePositive(width);
      requirePositive(depth);
    }
  }

  /** A rectangular chamber. */
  record Rectangle(Length width, Length depth) implements FloorPlan {
    /** Refuses sides that are not positive. */
    public Rectangle {
      requirePositive(width);
      requirePositive(depth);
    }
  }

  private static void requirePositive(Length length) {
    if (!length.isPositive()) {
      throw new IllegalArgumentException("A chamber must be larger than 0 in every direction");
    }
  }

  private static void requireSides(int sides) {
    if (sides < 5 || sides > 24) {
      throw new IllegalArgumentException("A polygon must have 5 to 24 sides, not " + sides);
    }
  }
}
