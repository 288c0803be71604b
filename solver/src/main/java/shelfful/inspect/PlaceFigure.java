package shelfful.inspect;

import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * How far a piece is from one thing it has to keep clear of, as the judge reads it.
 *
 * @param rule that asks for it
 * @param other what it is: a piece's id, a layer's id, the number of a post or an edge from 1, or a
 *     keep-out's name
 * @param measured the distance, rounded down; below zero where they overlap
 * @param required the distance to keep, tolerances included
 * @param holds whether the rule is kept here
 * @param line where the two come closest; of no length for heights
 */
public record PlaceFigure(
    Rule rule, String other, Length measured, Length required, boolean holds, Line line) {

  /** What is left over the required distance; below zero where it is not kept. */
  public Length spare() {
    return measured.minus(required);
  }

  /** Whether it is a distance in the plan, which moving on the shelf changes. */
  public boolean isInThePlan() {
    return line.awayX() != 0 || line.awayY() != 0;
  }

  /**
   * From the piece to the other thing, chamber frame.
   *
   * @param from on the piece
   * @param to on the other
   * @param awayX x of the unit vector in which the piece has to move for the distance to grow; both
   *     are 0 for heights
   * @param awayY y of it
   */
  public record Line(Point from, Point to, double awayX, double awayY) {}
}
