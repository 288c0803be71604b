package shelfful.drawing;

import java.util.List;

/**
 * How a line is drawn; ends and corners are round.
 *
 * @param width in millimetres of paper, positive
 * @param ink its colour
 * @param dashes lengths drawn and left out in turn, in millimetres of paper; empty for a full line
 */
public record Pen(double width, Ink ink, List<Double> dashes) {
  static final Pen OUTLINE = solid(0.5, Ink.BLACK);
  static final Pen THIN = solid(0.2, Ink.BLACK);
  static final Pen FOOT = dashed(0.2, Ink.DARK, 1.2, 1.2);
  static final Pen WALL = solid(0.9, Ink.MIDDLE);
  static final Pen NEIGHBOUR = solid(0.25, Ink.FAINT);
  static final Pen RULE = solid(0.2, Ink.FAINT);

  /** Takes its own copy and refuses a line without width. */
  public Pen {
    dashes = List.copyOf(dashes);
    if (!(width > 0)) {
      throw new IllegalArgumentException("A pen must be wider than 0, not " + width);
    }
  }

  static Pen solid(double width, Ink ink) {
    return new Pen(width, ink, List.of());
  }

  static Pen dashed(double width, Ink ink, double on, double off) {
    return new Pen(width, ink, List.of(on, off));
  }
}
