package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** How far things lie inside of shelves and chambers, against formulas and fine polygons. */
class RoomTest {
  private static final double FULLY = Double.POSITIVE_INFINITY;
  private static final int CASES = 1000;

  private static double depth(Room room, Footprint body) {
    return room.depth(body, FULLY).micrometres();
  }

  private static Length um(long micrometres) {
    return new Length(micrometres);
  }

  @Test
  void readsADiscInARoundShelfWithoutRounding() {
    Room room = ShelfLaying.atOrigin(new ShelfOutline.FullRound(um(540_000))).room();
    Disc disc = new Disc(30_000, 40_000, 60_001);
    assertThat(room.holds(disc, 189_999)).isTrue();
    assertThat(room.holds(disc, 190_000)).isFalse();
  }

  @Test
  void readsADiscAtASawCutWithoutRoundingAtEveryQuarterTurn() {
    for (int quarter = 0; quarter < 4; quarter++) {
      Angle turn = Angle.ofDegrees(90 * quarter);
      ShelfOutline half = new ShelfOutline.HalfRound(um(540_000), um(3_000));
      Room room = new ShelfLaying(half, Point.ofMillimetres(1, 2), turn).room();
      Vector at = new Vector(0, 36_500).turnedWith(Vector.towards(90_000 * quarter));
      Disc disc = new Disc((long) at.x() + 1_000, (long) at.y() + 2_000, 60_000);
      assertThat(room.holds(disc, 5_000)).isTrue();
      assertThat(room.holds(disc, 5_001)).isFalse();
    }
  }

  @Test
  void measuresPolygonsFromTheirFlats() {
    Room room = ChamberRoom.of(new FloorPlan.Polygon(7, um(584_000)));
    assertThat(depth(room, new Disc(0, 0, 20_000))).isCloseTo(282_000, within(0.01));
    // One flat faces the loader; the point straight away from it is a corner of a seven-sided
    // chamber.
    assertThat(depth(room, new Disc(0, -200_000, 20_000))).isCloseTo(82_000, within(0.01));
    double toNextFlats = 292_000 - 200_000 * Math.cos(Math.PI / 7) - 10_000;
    assertThat(depth(room, new Disc(0, 200_000, 20_000))).isCloseTo(toNextFlats, within(0.01));
  }

  @Test
  void measuresEllipsesInADiscAsFarAsTheirFarthestPoint() {
    Room room = ChamberRoom.of(new FloorPlan.Round(um(584_000)));
    Random random = new Random(1);
    for (int i = 0; i < CASES; i++) {
      Ellipse ellipse = Shapes.ellipse(random);
      double inside = 292_000 - farthest(Shapes.inside(ellipse));
      double around = 292_000 - farthest(Shapes.around(ellipse));
      assertThat(depth(room, ellipse)).isBetween(around - 0.2, inside + 0.01);
    }
  }

  private static double farthest(Geometry polygon) {
    double farthest = 0;
    for (Coordinate corner : polygon.getCoordinates()) {
      farthest = Math.max(farthest, Math.hypot(corner.x, corner.y));
    }
    return farthest;
  }

  @Test
  void measuresEllipsesOnHalfShelvesFromEveryEdge() {
    Room room = ShelfLaying.half(540_000, 3_000).room();
    Geometry edge = Shapes.halfDisc(270_000, 1_500, 1000).getBoundary();
    Random random = new Random(2);
    int inside = 0;
    for (int i = 0; i < CASES; i++) {
      Ellipse ellipse = Shapes.ellipse(random);
      double depth = depth(room, ellipse);
      if (depth > 0) {
        inside++;
        // Nearest is measured from the edge to polygons inside and around the ellipse.
        assertThat(depth).isLessThanOrEqualTo(edge.distance(Shapes.inside(ellipse)) + 2);
        assertThat(depth).isGreaterThanOrEqualTo(edge.distance(Shapes.around(ellipse)) - 2);
      }
    }
    assertThat(inside).isGreaterThan(15);
  }

  @Test
  void measuresDiscsInAnOvalChamberByItsNormal() {
    // From the outline inwards along the normal, as far as the curve allows: the way back is the
    // distance.
    Room room = ChamberRoom.of(new FloorPlan.Oval(um(800_000), um(600_000)));
    Random random = new Random(3);
    for (int i = 0; i < CASES; i++) {
      double t = random.nextDouble() * 2 * Math.PI;
      Vector normal = new Vector(300_000 * Math.cos(t), 400_000 * Math.sin(t)).unit();
      double in = 30_000 + random.nextInt(150_000);
      Vector at = new Vector(400_000 * Math.cos(t), 300_000 * Math.sin(t)).minus(normal.times(in));
      Bar tip = new Bar(at, at, 20_000);
      assertThat(depth(room, tip)).isBetween(in - 20_000 - 0.2, in - 20_000 + 0.01);
    }
  }

  @Test
  void measuresEllipsesInAnOvalChamberBetweenPolygons() {
    Room room = ChamberRoom.of(new FloorPlan.Oval(um(800_000), um(600_000)));
    Ellipse chamber = new Ellipse(Vector.ZERO, 400_000, 300_000, new Vector(1, 0));
    Geometry innerEdge = Shapes.inside(chamber).getBoundary();
    Geometry outerEdge = Shapes.around(chamber).getBoundary();
    Random random = new Random(4);
    for (int i = 0; i < CASES; i++) {
      Ellipse ellipse = Shapes.ellipse(random);
      double depth = depth(room, ellipse);
      if (depth > 500) {
        assertThat(depth).isLessThanOrEqualTo(outerEdge.distance(Shapes.inside(ellipse)) + 2);
        assertThat(depth).isGreaterThanOrEqualTo(innerEdge.distance(Shapes.around(ellipse)) - 2);
      }
    }
  }

  @Test
  void seesThatAParallelOvalOfTheSameProportionsJustFits() {
    // An oval scaled to a half and moved to the end of the long axis touches there from inside.
    Room room = ChamberRoom.of(new FloorPlan.Oval(um(800_000), um(600_000)));
    Ellipse half = new Ellipse(new Vector(200_000, 0), 200_000, 150_000, new Vector(1, 0));
    assertThat(depth(room, half)).isCloseTo(0, within(0.2));
  }

  @Test
  void findsCentroidsOfCutDiscs() {
    // The centroid of a half or quarter disc lies 4 r / 3π from each straight edge (any table of
    // centroids).
    double wanted = 4 * 270_000 / (3 * Math.PI);
    assertThat(ShelfLaying.half(540_000, 0).centroid().y()).isCloseTo(wanted, within(0.01));
    Vector quarter =
        ShelfLaying.atOrigin(new ShelfOutline.QuarterRound(um(540_000), um(0))).centroid();
    assertThat(quarter.x()).isCloseTo(wanted, within(0.01));
    assertThat(quarter.y()).isCloseTo(wanted, within(0.01));
  }

  @Test
  void findsCentroidsOfShelvesWithASawCutAsALibraryDoes() {
    Geometry half = Shapes.halfDisc(270_000, 25_000, 2000);
    assertThat(ShelfLaying.half(540_000, 50_000).centroid().y())
        .isCloseTo(half.getCentroid().getY(), within(2.0));
    Geometry quarter = half.intersection(Shapes.box(25_000, 25_000, 300_000, 300_000));
    Vector centroid =
        ShelfLaying.atOrigin(new ShelfOutline.QuarterRound(um(540_000), um(50_000))).centroid();
    assertThat(centroid.x()).isCloseTo(quarter.getCentroid().getX(), within(2.0));
  }

  @Test
  void cutsHalfPolygonsAtTheSawCut() {
    Slab slab =
        (Slab)
            ShelfLaying.atOrigin(new ShelfOutline.HalfPolygon(8, um(500_000), um(4_000)))
                .footprint();
    List<Double> heights = slab.corners().stream().map(Vector::y).toList();
    assertThat(heights).allMatch(y -> y >= 2_000 - 1e-6).hasSize(6);
    assertThat(slab.farthest(new Vector(0, 1)).y()).isCloseTo(250_000, within(1e-6));
  }
}
