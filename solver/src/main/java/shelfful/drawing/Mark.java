package shelfful.drawing;

import java.util.List;

/**
 * One thing a surface paints. Marks are painted in the order of their sheet, later ones over
 * earlier ones.
 */
public sealed interface Mark {
  /** A straight line. */
  record Line(Spot from, Spot to, Pen pen) implements Mark {}

  /**
   * Straight lines through corners.
   *
   * @param corners at least two
   * @param closed whether the last corner is joined to the first; only then is it filled
   */
  record Path(List<Spot> corners, boolean closed, Look look) implements Mark {
    /** Takes its own copy and refuses fewer than two corners. */
    public Path {
      corners = List.copyOf(corners);
      if (corners.size() < 2) {
        throw new IllegalArgumentException("A path needs at least two corners");
      }
    }
  }

  /** A circle. */
  record Circle(Spot centre, double radius, Look look) implements Mark {}

  /**
   * An ellipse.
   *
   * @param halfWidth half the axis that lies to the right before turning
   * @param halfDepth half the other axis
   * @param turn anticlockwise on the paper, in degrees
   */
  record Oval(Spot centre, double halfWidth, double halfDepth, double turn, Look look)
      implements Mark {}

  /**
   * A bar with round ends.
   *
   * @param from one end of its middle line
   * @param to the other end, which may be the same spot
   * @param width across
   */
  record Capsule(Spot from, Spot to, double width, Look look) implements Mark {}

  /**
   * Many short straight lines with one pen, already cut to the shape they fill. A dot is a stroke
   * of almost no length.
   */
  record Hatching(List<Line> strokes, Pen pen) implements Mark {
    /** Takes its own copy. */
    public Hatching {
      strokes = List.copyOf(strokes);
    }

    /** One stroke of a hatching. */
    public record Line(Spot from, Spot to) {}
  }

  /**
   * A line of text.
   *
   * @param at on the base line: the start, middle or end of the words, as the anchor says
   * @param words only letters the typeface has, no control characters
   * @param size in points, at least 8
   * @param width the measured width of the words, in millimetres
   */
  record Text(
      Spot at, String words, double size, Weight weight, Anchor anchor, double width, Ink ink)
      implements Mark {
    private static final double ASCENT = 0.76;
    private static final double DESCENT = 0.24;

    /** The spot where the first letter starts. */
    public Spot start() {
      double back =
          switch (anchor) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
          };
      return at.plus(-back, 0);
    }

    /** What the words cover, from the tallest letters to the lowest tails. */
    public Box box() {
      double unit = size * Typeface.MILLIMETRES_PER_POINT;
      double left = start().x();
      return new Box(left, at.y() - ASCENT * unit, left + width, at.y() + DESCENT * unit);
    }
  }
}
