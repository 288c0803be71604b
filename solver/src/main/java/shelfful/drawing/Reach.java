package shelfful.drawing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import shelfful.measure.Point;

/**
 * What corners in the chamber cover along one direction, in millimetres.
 *
 * @param from the smallest
 * @param to the largest
 */
record Reach(double from, double to) {
  static Reach of(List<Point> corners, ToDoubleFunction<Point> along) {
    double from = corners.stream().mapToDouble(along).min().orElse(0);
    double to = corners.stream().mapToDouble(along).max().orElse(0);
    return new Reach(from, to);
  }

  static Reach alongX(List<Point> corners) {
    return of(corners, corner -> corner.x().millimetres());
  }

  static Reach alongY(List<Point> corners) {
    return of(corners, corner -> corner.y().millimetres());
  }

  double length() {
    return to - from;
  }

  double middle() {
    return (from + to) / 2;
  }

  /** How much of one direction both cover, 0 when they are apart. */
  double shared(Reach other) {
    return Math.max(0, Math.min(to, other.to) - Math.max(from, other.from));
  }
}
