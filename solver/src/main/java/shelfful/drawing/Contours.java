package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Point;

/**
 * Outlines of chambers and shelves as corners in the chamber frame, anticlockwise. Arcs become
 * chords of 2°; on paper they leave a 300 mm arc at 1 : 4 by a hundredth of a millimetre.
 */
final class Contours {
  private static final double CHORD = Math.toRadians(2);

  private Contours() {}

  static List<Point> of(FloorPlan plan) {
    if (plan instanceof FloorPlan.Rectangle rectangle) {
      return points(rectangle(rectangle.width().millimetres(), rectangle.depth().millimetres()));
    }
    if (plan instanceof FloorPlan.Polygon polygon) {
      return points(polygon(polygon.sides(), polygon.acrossFlats().millimetres()));
    }
    return points(oval(plan.width().millimetres() / 2, plan.depth().millimetres() / 2));
  }

  /** A shelf of this outline where it lies. */
  static List<Point> of(ShelfOutline outline, ShelfPlace place) {
    double turn = place.turn().radians();
    double x = place.at().x().millimetres();
    double y = place.at().y().millimetres();
    List<double[]> placed = new ArrayList<>();
    for (double[] corner : ownFrame(outline)) {
      placed.add(
          new double[] {
            x + corner[0] * Math.cos(turn) - corner[1] * Math.sin(turn),
            y + corner[0] * Math.sin(turn) + corner[1] * Math.cos(turn)
          });
    }
    return points(placed);
  }

  private static List<double[]> ownFrame(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound round) {
      double radius = round.diameter().millimetres() / 2;
      return oval(radius, radius);
    }
    if (outline instanceof ShelfOutline.HalfRound half) {
      double radius = half.diameter().millimetres() / 2;
      return above(oval(radius, radius), 1, half.sawCut().millimetres() / 2);
    }
    if (outline instanceof ShelfOutline.QuarterRound quarter) {
      double radius = quarter.diameter().millimetres() / 2;
      double cut = quarter.sawCut().millimetres() / 2;
      return above(above(oval(radius, radius), 1, cut), 0, cut);
    }
    if (outline instanceof ShelfOutline.Polygon polygon) {
      return polygon(polygon.sides(), polygon.acrossFlats().millimetres());
    }
    if (outline instanceof ShelfOutline.HalfPolygon half) {
      List<double[]> whole = polygon(half.sides(), half.acrossFlats().millimetres());
      return above(whole, 1, half.sawCut().millimetres() / 2);
    }
    ShelfOutline.Rectangle rectangle = (ShelfOutline.Rectangle) outline;
    return rectangle(rectangle.width().millimetres(), rectangle.depth().millimetres());
  }

  private static List<double[]> rectangle(double width, double depth) {
    double x = width / 2;
    double y = depth / 2;
    return List.of(
        new double[] {-x, -y}, new double[] {x, -y}, new double[] {x, y}, new double[] {-x, y});
  }

  private static List<double[]> polygon(int sides, double acrossFlats) {
    double radius = acrossFlats / 2 / Math.cos(Math.PI / sides);
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = -Math.PI / 2 + (2 * i - 1) * Math.PI / sides;
      corners.add(new double[] {radius * Math.cos(angle), radius * Math.sin(angle)});
    }
    return corners;
  }

  private static List<double[]> oval(double halfWidth, double halfDepth) {
    List<double[]> corners = new ArrayList<>();
    int chords = (int) Math.round(2 * Math.PI / CHORD);
    for (int i = 0; i < chords; i++) {
      double angle = i * CHORD;
      corners.add(new double[] {halfWidth * Math.cos(angle), halfDepth * Math.sin(angle)});
    }
    return corners;
  }

  /** The part of a convex outline where a coordinate (0 for x, 1 for y) is at least so much. */
  private static List<double[]> above(List<double[]> corners, int axis, double least) {
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      double[] here = corners.get(i);
      double[] next = corners.get((i + 1) % corners.size());
      if (here[axis] >= least) {
        kept.add(here);
      }
      if (here[axis] >= least != next[axis] >= least) {
        double share = (least - here[axis]) / (next[axis] - here[axis]);
        kept.add(
            new double[] {
              here[0] + share * (next[0] - here[0]), here[1] + share * (next[1] - here[1])
            });
      }
    }
    return kept;
  }

  private static List<Point> points(List<double[]> corners) {
    return corners.stream().map(corner -> Point.ofMillimetres(corner[0], corner[1])).toList();
  }
}
