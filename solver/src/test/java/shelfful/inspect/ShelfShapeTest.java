package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Geometry;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Every kind of shelf against the same shape built by a geometry library, and at any turn. */
class ShelfShapeTest {
  private static final double FULLY = Double.POSITIVE_INFINITY;

  /**
   * How far a polygon of 2000 corners may lie inside of a circle of 270 mm, and reading resolution.
   */
  private static final double NEAR = 270_000 * (1 - Math.cos(Math.PI / 2000)) + 0.2;

  private static final Map<ShelfOutline, Geometry> SHAPES =
      Map.of(
          new ShelfOutline.FullRound(um(540_000)), disc(),
          new ShelfOutline.HalfRound(um(540_000), um(3_000)), above(disc(), 1_500),
          new ShelfOutline.QuarterRound(um(540_000), um(3_000)),
              above(disc(), 1_500).intersection(Shapes.box(1_500, 0, 300_000, 300_000)),
          new ShelfOutline.Polygon(7, um(540_000)), polygon(7),
          new ShelfOutline.Polygon(12, um(540_000)), polygon(12),
          new ShelfOutline.HalfPolygon(7, um(540_000), um(4_000)), above(polygon(7), 2_000),
          new ShelfOutline.HalfPolygon(8, um(540_000), um(4_000)), above(polygon(8), 2_000),
          new ShelfOutline.Rectangle(um(540_000), um(400_000)),
              Shapes.box(-270_000, -200_000, 270_000, 200_000));

  private static Length um(long micrometres) {
    return new Length(micrometres);
  }

  private static Geometry disc() {
    return Shapes.ring(
        2000, angle -> new Vector(270_000 * Math.cos(angle), 270_000 * Math.sin(angle)));
  }

  /**
   * The first corner is half a side's angle past straight down, so that the side before it is flat.
   */
  private static Geometry polygon(int sides) {
    double corner = 270_000 / Math.cos(Math.PI / sides);
    double start = -Math.PI / 2 + Math.PI / sides;
    return Shapes.ring(
        sides,
        angle -> new Vector(corner * Math.cos(start + angle), corner * Math.sin(start + angle)));
  }

  private static Geometry above(Geometry shape, double y) {
    return shape.intersection(Shapes.box(-400_000, y, 400_000, 400_000));
  }

  @TestFactory
  Stream<DynamicTest> agreesWithALibrary() {
    return SHAPES.entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey().toString(),
                    () -> assertAgrees(entry.getKey(), entry.getValue())));
  }

  private static void assertAgrees(ShelfOutline outline, Geometry shape) {
    ShelfLaying laying = ShelfLaying.atOrigin(outline);
    Geometry edge = shape.getBoundary();
    Random random = new Random(9);
    for (int i = 0; i < 400; i++) {
      Vector at = Shapes.spot(random, 400_000);
      Disc body = new Disc((long) at.x(), (long) at.y(), 2_000);
      double toEdge = edge.distance(Shapes.point(at));
      if (shape.contains(Shapes.point(at))) {
        double depth = laying.room().depth(body, FULLY).micrometres();
        assertThat(depth).isBetween(toEdge - 1_000 - 1, toEdge - 1_000 + NEAR);
      } else {
        double gap = Gap.between(laying.footprint(), body, FULLY).micrometres();
        assertThat(gap).isBetween(toEdge - 1_000 - NEAR - 1, toEdge - 1_000 + 0.2);
      }
    }
    assertThat(laying.centroid().x()).isCloseTo(shape.getCentroid().getX(), within(2.0));
    assertThat(laying.centroid().y()).isCloseTo(shape.getCentroid().getY(), within(2.0));
  }

  @TestFactory
  Stream<DynamicTest> measuresTheSameAtEveryTurnAndPlace() {
    return SHAPES.keySet().stream()
        .map(outline -> DynamicTest.dynamicTest(outline.toString(), () -> assertTurns(outline)));
  }

  private static void assertTurns(ShelfOutline outline) {
    Random random = new Random(10);
    Room plain = ShelfLaying.atOrigin(outline).room();
    Footprint slab = ShelfLaying.atOrigin(outline).footprint();
    for (int i = 0; i < 400; i++) {
      Ellipse ellipse = Shapes.ellipse(random);
      Angle turn = new Angle(random.nextInt(360_000));
      Point at = new Point(um(random.nextInt(200_000)), um(-random.nextInt(200_000)));
      Vector direction = Vector.towards(turn.millidegrees());
      Ellipse laid =
          new Ellipse(
              ellipse.middle().turnedWith(direction).plus(Vector.of(at)),
              ellipse.halfWidth(),
              ellipse.halfDepth(),
              ellipse.axis().turnedWith(direction));
      ShelfLaying laying = new ShelfLaying(outline, at, turn);
      assertThat(laying.room().depth(laid, FULLY).micrometres())
          .isCloseTo(plain.depth(ellipse, FULLY).micrometres(), within(0.2));
      assertThat(Gap.between(laying.footprint(), laid, FULLY).micrometres())
          .isCloseTo(Gap.between(slab, ellipse, FULLY).micrometres(), within(0.2));
    }
  }
}
