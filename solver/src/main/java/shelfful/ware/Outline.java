package shelfful.ware;

import shelfful.measure.Length;

/** What a piece covers, seen from above, centred on its axis. */
public sealed interface Outline {

  /** The same outline as large as the factor says, each size rounded up. */
  Outline scaledUp(double factor);

  /**
   * The same outline with a margin all round. For an oval the half axes grow, which is what a
   * catcher does.
   */
  Outline wider(Length margin);

  /** The size along the form's x axis. */
  Length width();

  /** The size along the form's y axis. */
  Length depth();

  /**
   * A circle.
   *
   * @param diameter positive
   */
  record Round(Length diameter) implements Outline {
    /** Refuses a diameter that is not positive. */
    public Round {
      requirePositive("diameter", diameter);
    }

    @Override
    public Round scaledUp(double factor) {
      return new Round(diameter.scaledUp(factor));
    }

    @Override
    public Round wider(Length margin) {
      return new Round(diameter.plus(margin).plus(margin));
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
   * An ellipse with its axes along x and y.
   *
   * @param width whole axis along x, positive
   * @param depth whole axis along y, positive
   */
  record Oval(Length width, Length depth) implements Outline {
    /** Refuses axes that are not positive. */
    public Oval {
      requirePositive("width", width);
      requirePositive("depth", depth);
    }

    @Override
    public Oval scaledUp(double factor) {
      return new Oval(width.scaledUp(factor), depth.scaledUp(factor));
    }

    @Override
    public Oval wider(Length margin) {
      return new Oval(width.plus(margin).plus(margin), depth.plus(margin).plus(margin));
    }
  }

  private static void requirePositive(String what, Length length) {
    if (!length.isPositive()) {
      throw new IllegalArgumentException("The " + what + " of an outline must be more than 0");
    }
  }
}
