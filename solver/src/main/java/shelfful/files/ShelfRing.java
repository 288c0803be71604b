package shelfful.files;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.ShelfOutline;

/**
 * Turns the outline of a shelf into a ring of corners, arcs in steps of a degree (0.02 mm on a
 * metre's disc).
 */
final class ShelfRing {
  private ShelfRing() {}

  static ConvexRing of(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound round) {
      return new ConvexRing(arc(round.diameter().millimetres() / 2, 0, 359));
    }
    if (outline instanceof ShelfOutline.HalfRound half) {
      double radius = half.diameter().millimetres() / 2;
      double cut = half.sawCut().millimetres() / 2;
      double start = Math.toDegrees(Math.asin(cut / radius));
      return new ConvexRing(arc(radius, start, 180 - start));
    }
    if (outline instanceof ShelfOutline.QuarterRound quarter) {
      return quarter(quarter.diameter().millimetres() / 2, quarter.sawCut().millimetres() / 2);
    }
    if (outline instanceof ShelfOutline.Polygon polygon) {
      return ConvexRing.regular(polygon.sides(), polygon.acrossFlats().millimetres() / 2);
    }
    if (outline instanceof ShelfOutline.HalfPolygon half) {
      return ConvexRing.regular(half.sides(), half.acrossFlats().millimetres() / 2)
          .above(half.sawCut().millimetres() / 2);
    }
    ShelfOutline.Rectangle rectangle = (ShelfOutline.Rectangle) outline;
    double x = rectangle.width().millimetres() / 2;
    double y = rectangle.depth().millimetres() / 2;
    return new ConvexRing(
        List.of(
            new double[] {-x, -y},
            new double[] {x, -y},
            new double[] {x, y},
            new double[] {-x, y}));
  }

  private static ConvexRing quarter(double radius, double cut) {
    double start = Math.toDegrees(Math.asin(Math.min(1, cut / radius)));
    List<double[]> corners = new ArrayList<>();
    corners.add(new double[] {cut, cut});
    corners.addAll(arc(radius, start, Math.max(start, 90 - start)));
    return new ConvexRing(corners);
  }

  /** Corners from one angle to another in steps of a degree, both ends included. */
  private static List<double[]> arc(double radius, double start, double end) {
    List<double[]> corners = new ArrayList<>();
    for (double degrees = start; degrees < end; degrees += 1) {
      corners.add(at(radius, degrees));
    }
    corners.add(at(radius, end));
    return corners;
  }

  private static double[] at(double radius, double degrees) {
    double angle = Math.toRadians(degrees);
    return new double[] {radius * Math.cos(angle), radius * Math.sin(angle)};
  }
}
