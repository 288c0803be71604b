package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.geometry.Region;
import shelfful.packing.Tables;

/**
 * The inequality of cells against published packings, which are as tight as anybody knows, and
 * against the bound of Groemer (1960) and Oler (1961). Whatever the prices, it must hold.
 */
class CellBoundTest {
  private static final int TRIES = 60;
  private static final double NONE = Double.POSITIVE_INFINITY;

  private static double taken(RoomRim rim, CellPrices prices, double[] radii) {
    return DoubleStream.of(radii).map(r -> CellBound.share(rim, r, r, NONE, prices)).sum();
  }

  private static void assertHolds(Region region, double[] radii, String what) {
    ConvexPolygon room = ConvexPolygon.everywhere().within(region, 0, Side.WALL);
    RoomRim rim = new RoomRim(room);
    Random random = new Random(radii.length);
    double unit = DoubleStream.of(radii).average().orElseThrow();
    for (int i = 0; i < TRIES; i++) {
      CellPrices prices = RandomPrices.of(random, unit);
      assertThat(taken(rim, prices, radii))
          .as("%s under %s", what, prices)
          .isLessThanOrEqualTo(CellBound.room(room, prices));
    }
    CellPrices tuned = CellPrices.tunedTo(unit);
    assertThat(taken(rim, tuned, radii)).as(what).isLessThanOrEqualTo(CellBound.room(room, tuned));
  }

  private static double[] equal(int n) {
    return DoubleStream.generate(() -> 1).limit(n).toArray();
  }

  @Test
  void holdsForTheRecordsOfEqualCirclesInACircle() {
    Map<Integer, Double> records = Tables.circlesInCircle();
    records.forEach(
        (n, ratio) -> {
          if (n > 1) {
            assertHolds(Region.disc(ratio), equal(n), n + " in a circle");
          }
        });
  }

  @Test
  void holdsForTheRecordsOfEqualCirclesInASquare() {
    Tables.circlesInSquare()
        .forEach(
            (n, side) -> {
              if (n > 1) {
                assertHolds(Region.rectangle(side, side), equal(n), n + " in a square");
              }
            });
  }

  @Test
  void holdsForThePackingsOfRadiiOneToN() {
    Tables.radiiOneTo()
        .forEach(
            (n, radius) ->
                assertHolds(
                    Region.disc(radius),
                    IntStream.rangeClosed(1, n).asDoubleStream().toArray(),
                    "radii 1 to " + n));
  }

  /** Rows of hexagonal packing along a long strip: nothing is lost but at the two ends. */
  @Test
  void holdsForHexagonalRowsInARectangle() {
    for (int rows : List.of(1, 2, 3, 6)) {
      int inRow = 40;
      double width = 2 * inRow + (rows > 1 ? 1 : 0);
      double height = 2 + (rows - 1) * Math.sqrt(3);
      assertHolds(Region.rectangle(width, height), equal(rows * inRow), rows + " rows");
    }
  }

  /** On a straight wall the prices are within one per cent of a radius of Groemer's and Oler's. */
  @Test
  void isNearlyGroemersBoundInAHugeSquare() {
    double side = 400;
    ConvexPolygon room =
        ConvexPolygon.everywhere().within(Region.rectangle(side, side), 0, Side.WALL);
    CellPrices prices = CellPrices.tunedTo(1);
    double most =
        CellBound.room(room, prices) / CellBound.share(new RoomRim(room), 1, 1, NONE, prices);
    double inner = side - 2;
    double groemer = 2 / Math.sqrt(3) * inner * inner / 4 + 4 * inner / 4 + 1;
    assertThat(most / groemer).isCloseTo(1, within(2e-4));
  }

  /** Without any price a cell is worth its disc, and a room its area. */
  @Test
  void isTheAreaWhenNothingHasAPrice() {
    RoomRim rim = new RoomRim(ConvexPolygon.everywhere().within(Region.disc(9), 0, Side.WALL));
    assertThat(CellBound.share(rim, 2, 2, NONE, CellPrices.none()))
        .isCloseTo(4 * Math.PI, within(1e-6));
  }

  /**
   * A disc cut by the edge: a row of circles along a straight border through which each reaches by
   * up to half its radius, as ware over the edge of a half shelf does.
   */
  @Test
  void holdsForCirclesThatReachPastABorder() {
    int inRow = 30;
    double height = 2 + Math.sqrt(3);
    Random random = new Random(5);
    for (int i = 0; i < TRIES; i++) {
      double past = random.nextDouble() / 2;
      ConvexPolygon room =
          ConvexPolygon.everywhere()
              .within(Region.rectangle(0, 0, 2 * inRow + 1, height), 0, Side.WALL)
              .cut(0, 1, height - past, Side.EDGE);
      CellPrices prices = RandomPrices.of(random, 1);
      RoomRim rim = new RoomRim(room);
      double lower = CellBound.share(rim, 1, 1, 1 + Math.sqrt(3) - past, prices);
      double upper = CellBound.share(rim, 1, 1, 1 - past, prices);
      double least = Math.min(lower, upper);
      assertThat(2 * inRow * least).isLessThanOrEqualTo(CellBound.room(room, prices));
      assertThat(inRow * (lower + upper)).isLessThanOrEqualTo(CellBound.room(room, prices));
    }
  }
}
