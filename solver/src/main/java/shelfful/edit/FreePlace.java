package shelfful.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import shelfful.kiln.Column;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.Kiln;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Places of a layer worth trying, the nearest first: a grid, finer than a hand needs. */
record FreePlace(Load load, Layer layer) {
  private static final double STEP = 8;
  private static final int DIRECTIONS = 8;
  private static final int EIGHTH = 45_000;

  /**
   * A place and a direction.
   *
   * @param at chamber frame
   */
  record Pose(Point at, Angle turn) {}

  Stream<Pose> around(Point near, Angle turn, boolean mayTurn) {
    List<Point> points = grid();
    points.sort(Comparator.comparingDouble(point -> distance(point, near)));
    return Stream.concat(Stream.of(near), points.stream())
        .flatMap(point -> turns(turn, mayTurn ? DIRECTIONS : 1).map(one -> new Pose(point, one)));
  }

  private static Stream<Angle> turns(Angle first, int count) {
    return Stream.iterate(0, turned -> turned < count, turned -> turned + 1)
        .map(turned -> new Angle(first.millidegrees() + turned * EIGHTH));
  }

  private List<Point> grid() {
    FloorPlan chamber = kiln().chamber().floorPlan();
    Point middle = column().places().get(layer.place()).at();
    double across = chamber.width().millimetres() / 2;
    double deep = chamber.depth().millimetres() / 2;
    List<Point> points = new ArrayList<>();
    for (double x = -across; x <= across; x += STEP) {
      for (double y = -deep; y <= deep; y += STEP) {
        points.add(
            new Point(
                middle.x().plus(Length.ofMillimetres(x)),
                middle.y().plus(Length.ofMillimetres(y))));
      }
    }
    return points;
  }

  private Kiln kiln() {
    return load.request().kiln();
  }

  private Column column() {
    return kiln().columnPlans().stream()
        .flatMap(plan -> plan.columns().stream())
        .filter(column -> column.id().equals(layer.columnId()))
        .findFirst()
        .orElseThrow();
  }

  private static double distance(Point one, Point other) {
    return Math.hypot(
        one.x().minus(other.x()).millimetres(), one.y().minus(other.y()).millimetres());
  }
}
