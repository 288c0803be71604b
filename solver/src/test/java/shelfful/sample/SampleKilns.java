package shelfful.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shelfful.kiln.Chamber;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Loading;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Kilns to load, every one called {@code kiln}. Millimetres. */
final class SampleKilns {
  static final String ID = "kiln";
  private static final double POST_IN = 38;

  private static final List<Point> BACK = points(-200, 40, 200, 40, 0, 225);
  private static final List<Point> FRONT = points(200, -40, -200, -40, 0, -225);

  private SampleKilns() {}

  /** 584 across, 686 high, with a thermocouple in the wall; column plans as named. */
  static Kiln round(ColumnPlan... plans) {
    KeepOut thermocouple =
        new KeepOut(
            "thermocouple",
            KeepOut.Kind.THERMOCOUPLE,
            Point.ofMillimetres(-292, 0),
            Point.ofMillimetres(-276, 0),
            mm(10),
            mm(330),
            mm(346));
    return new Kiln(
        ID,
        "round top-loader",
        Loading.TOP,
        new Chamber(new FloorPlan.Round(mm(584)), mm(686)),
        Optional.empty(),
        List.of(thermocouple),
        List.of(plans));
  }

  /** 430 across, 420 high. */
  static Kiln smallRound() {
    List<Point> posts = points(0, 152, -131, -76, 131, -76);
    Column column = new Column("full", List.of(place("small", 0, 0, 0)), posts, List.of());
    return plain(new FloorPlan.Round(mm(430)), 420, plan("full", column));
  }

  /** 580 square, 700 high, one square shelf of 508 at each level. */
  static Kiln square() {
    return plain(
        new FloorPlan.Rectangle(mm(580), mm(580)),
        700,
        plan("full", slabs("full", SampleShelves.SQUARE, 0, 0)));
  }

  /**
   * A front-loader of columns side by side, shelves of 305 by 610 with the long side to the back.
   */
  static Kiln front(int columns, double high) {
    List<Column> all = new ArrayList<>();
    for (int c = 0; c < columns; c++) {
      double x = (c - (columns - 1) / 2.0) * 316;
      all.add(slabs("column-" + (c + 1), SampleShelves.LONG, x, 0));
    }
    return plain(
        new FloorPlan.Rectangle(mm(316 * columns + 70), mm(680)),
        high,
        new ColumnPlan("own-heights", "own-heights", all));
  }

  /** A large front-loader: rows of columns one behind the other, shelves of 508 by 508. */
  static Kiln hall(int across, int deep, double high) {
    List<Column> all = new ArrayList<>();
    for (int c = 0; c < across * deep; c++) {
      double x = (c % across - (across - 1) / 2.0) * 520;
      double y = (c / across - (deep - 1) / 2.0) * 520;
      all.add(slabs("column-" + (c + 1), SampleShelves.SQUARE, x, y));
    }
    return plain(
        new FloorPlan.Rectangle(mm(520 * across + 70), mm(520 * deep + 70)),
        high,
        new ColumnPlan("own-heights", "own-heights", all));
  }

  /** Full shelves on three posts. */
  static ColumnPlan full() {
    List<Point> three = points(0, 230, -199, -115, 199, -115);
    return plan("full", new Column("full", List.of(place("full", 0, 0, 0)), three, List.of()));
  }

  /** Two halves side by side, each at heights of its own. */
  static ColumnPlan halves() {
    return plan("halves", half("back", 0, BACK), half("front", 180, FRONT));
  }

  /** Full shelves on six posts, and halves at heights of their own over them. */
  static ColumnPlan halvesOverFull() {
    List<Point> six = Stream.concat(BACK.stream(), FRONT.stream()).toList();
    Column full = new Column("full", List.of(place("full", 0, 0, 0)), six, List.of());
    return plan(
        "halves-over-full", full, half("back", 0, BACK, "full"), half("front", 180, FRONT, "full"));
  }

  private static Column half(String id, double degrees, List<Point> posts, String... standsOn) {
    return new Column(id, List.of(place("half", 0, 0, degrees)), posts, List.of(standsOn));
  }

  /** A column of rectangular shelves on four posts, in from the corners. */
  private static Column slabs(String id, SampleShelves.Slab slab, double x, double y) {
    double dx = slab.width() / 2 - POST_IN;
    double dy = slab.depth() / 2 - POST_IN;
    List<Point> posts = points(x - dx, y - dy, x + dx, y - dy, x + dx, y + dy, x - dx, y + dy);
    return new Column(id, List.of(place(slab.id(), x, y, 0)), posts, List.of());
  }

  private static Kiln plain(FloorPlan floor, double high, ColumnPlan plan) {
    return new Kiln(
        ID,
        "kiln",
        Loading.FRONT,
        new Chamber(floor, mm(high)),
        Optional.empty(),
        List.of(),
        List.of(plan));
  }

  private static ColumnPlan plan(String id, Column... columns) {
    return new ColumnPlan(id, id, List.of(columns));
  }

  private static ShelfPlace place(String shelf, double x, double y, double degrees) {
    return new ShelfPlace(List.of(shelf), Point.ofMillimetres(x, y), Angle.ofDegrees(degrees));
  }

  private static List<Point> points(double... coordinates) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(Point.ofMillimetres(coordinates[i], coordinates[i + 1]));
    }
    return points;
  }

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
