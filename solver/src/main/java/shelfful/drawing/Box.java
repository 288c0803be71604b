package shelfful.drawing;

import java.util.List;

/**
 * An upright rectangle on a sheet, in millimetres of paper.
 *
 * @param left its smallest x
 * @param top its smallest y
 * @param right its largest x
 * @param bottom its largest y
 */
public record Box(double left, double top, double right, double bottom) {
  /** The smallest box round some spots. */
  static Box round(List<Spot> spots) {
    return new Box(
        spots.stream().mapToDouble(Spot::x).min().orElseThrow(),
        spots.stream().mapToDouble(Spot::y).min().orElseThrow(),
        spots.stream().mapToDouble(Spot::x).max().orElseThrow(),
        spots.stream().mapToDouble(Spot::y).max().orElseThrow());
  }

  static Box about(Spot centre, double half) {
    return new Box(centre.x() - half, centre.y() - half, centre.x() + half, centre.y() + half);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  Spot corner() {
    return new Spot(left, top);
  }

  Spot centre() {
    return new Spot((left + right) / 2, (top + bottom) / 2);
  }

  Box below(double y) {
    return new Box(left, y, right, bottom);
  }

  Box above(double y) {
    return new Box(left, top, right, y);
  }

  Box inset(double by) {
    return new Box(left + by, top + by, right - by, bottom - by);
  }

  /** Whether two boxes share more than an edge. */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Whether a box lies within this one. */
  public boolean holds(Box other) {
    return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
  }
}
