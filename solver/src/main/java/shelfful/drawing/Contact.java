package shelfful.drawing;

import java.util.List;
import shelfful.measure.Point;

/**
 * Rough questions about convex outlines, good enough to choose what to draw; nothing here judges a
 * load.
 */
final class Contact {
  private static final double TOUCHING = 0.01;

  private Contact() {}

  /** Whether a disc of so many millimetres about a point lies at least partly over an outline. */
  static boolean isOver(List<Point> contour, Point at, double radius) {
    for (int i = 0; i < contour.size(); i++) {
      Point here = contour.get(i);
      Point next = contour.get((i + 1) % contour.size());
      if (beyond(here, next, at) > radius) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether two convex outlines share more than their edges: no side of either has the whole other
   * beyond it.
   */
  static boolean overlap(List<Point> one, List<Point> other) {
    return !isParted(one, other) && !isParted(other, one);
  }

  private static boolean isParted(List<Point> sides, List<Point> other) {
    for (int i = 0; i < sides.size(); i++) {
      Point here = sides.get(i);
      Point next = sides.get((i + 1) % sides.size());
      if (other.stream().allMatch(corner -> beyond(here, next, corner) > -TOUCHING)) {
        return true;
      }
    }
    return false;
  }

  /**
   * How far a point lies to the right of a side, in millimetres; outside for anticlockwise
   * outlines.
   */
  private static double beyond(Point from, Point to, Point at) {
    double x = to.x().millimetres() - from.x().millimetres();
    double y = to.y().millimetres() - from.y().millimetres();
    double length = Math.hypot(x, y);
    if (length == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    double cross =
        x * (at.y().millimetres() - from.y().millimetres())
            - y * (at.x().millimetres() - from.x().millimetres());
    return -cross / length;
  }
}
