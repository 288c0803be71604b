package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Distances against closed formulas and against polygons of a geometry library that lie inside and
 * around.
 */
class GapTest {
  private static final double FULLY = Double.POSITIVE_INFINITY;
  private static final int CASES = 3000;

  private static double gap(Footprint one, Footprint other) {
    return Gap.between(one, other, FULLY).micrometres();
  }

  @Test
  void readsDiscsWithoutRounding() {
    // A right triangle of 3, 4 and 5: the middles are exactly 50 mm apart.
    Disc one = new Disc(0, 0, 30_000);
    Disc other = new Disc(30_000, 40_000, 50_000);
    assertThat(Gap.between(one, other, FULLY)).isEqualTo(new Reading(10_000, true));
    assertThat(Gap.isAtLeast(one, other, 10_000)).isTrue();
    assertThat(Gap.isAtLeast(one, other, 10_001)).isFalse();
  }

  @Test
  void tellsDiscsApartByTheLastMicrometreAtOddDiameters() {
    Disc one = new Disc(0, 0, 30_001);
    Disc other = new Disc(40_001, 0, 50_000);
    assertThat(Gap.isAtLeast(one, other, 0)).isTrue();
    assertThat(Gap.isAtLeast(one, other, 1)).isFalse();
  }

  @Test
  void readsCoincidentDiscsAsFarInsideEachOther() {
    Disc disc = new Disc(5, 5, 20_000);
    assertThat(gap(disc, disc)).isEqualTo(-20_000);
  }

  @Test
  void keepsCountAtAHundredMetres() {
    Disc one = new Disc(-100_000_000, -100_000_000, 2);
    Disc other = new Disc(100_000_000, 100_000_000, 2);
    assertThat(gap(one, other)).isCloseTo(200_000_000 * Math.sqrt(2) - 2, within(1.0));
  }

  @Test
  void measuresEllipsesAlongTheirAxes() {
    Ellipse flat = new Ellipse(Vector.ZERO, 110_000, 65_000, new Vector(1, 0));
    assertThat(gap(flat, new Disc(150_000, 0, 60_000))).isCloseTo(10_000, within(0.2));
    assertThat(gap(flat, new Disc(0, -100_000, 60_000))).isCloseTo(5_000, within(0.2));
    Ellipse upright = new Ellipse(new Vector(180_000, 0), 110_000, 65_000, new Vector(0, 1));
    assertThat(gap(flat, upright)).isCloseTo(5_000, within(0.2));
  }

  @Test
  void measuresAPointFromAnEllipseByItsNormal() {
    // The normal of x²/a² + y²/b² = 1 at (a cos t, b sin t) has the direction (b cos t, a sin t).
    Random random = new Random(4);
    for (int i = 0; i < CASES; i++) {
      double a = 20_000 + random.nextInt(100_000);
      double b = 20_000 + random.nextInt(100_000);
      double t = random.nextDouble() * 2 * Math.PI;
      double far = 3_000 + random.nextInt(50_000);
      Vector normal = new Vector(b * Math.cos(t), a * Math.sin(t)).unit();
      Vector point = new Vector(a * Math.cos(t), b * Math.sin(t)).plus(normal.times(far));
      Bar tip = new Bar(point, point, 1_000);
      Ellipse ellipse = new Ellipse(Vector.ZERO, a, b, new Vector(1, 0));
      assertThat(gap(ellipse, tip)).isBetween(far - 1_000 - 0.2, far - 1_000 + 0.01);
    }
  }

  @Test
  void liesBetweenThePolygonsInsideAndAroundTwoEllipses() {
    Random random = new Random(1);
    for (int i = 0; i < CASES; i++) {
      Ellipse one = Shapes.ellipse(random);
      Ellipse other = Shapes.ellipse(random);
      double gap = gap(one, other);
      double most = Shapes.inside(one).distance(Shapes.inside(other));
      double least = Shapes.around(one).distance(Shapes.around(other));
      assertThat(gap).isLessThanOrEqualTo(most + 0.01);
      if (least > 0) {
        assertThat(gap).isGreaterThanOrEqualTo(least - 0.2);
      }
      if (gap > 0) {
        assertThat(Shapes.inside(one).intersects(Shapes.inside(other))).isFalse();
      }
      assertThat(gap(other, one)).as("swapped").isCloseTo(gap, within(0.2));
    }
  }

  @Test
  void readsOverlappingEllipsesBelowZeroByHowFarTheyMustMove() {
    Random random = new Random(2);
    int overlapping = 0;
    for (int i = 0; i < CASES; i++) {
      Ellipse one = Shapes.ellipse(random);
      Ellipse other = Shapes.ellipse(random);
      boolean overlap = Shapes.inside(one).intersects(Shapes.inside(other));
      if (overlap) {
        overlapping++;
        assertThat(gap(one, other)).isLessThan(0.01);
      }
    }
    assertThat(overlapping).isGreaterThan(CASES / 10);
    Ellipse round = new Ellipse(Vector.ZERO, 50_000, 50_000, new Vector(1, 0));
    Disc disc = new Disc(30_000, 0, 20_000);
    assertThat(gap(round, disc)).isCloseTo(30_000 - 60_000, within(0.2));
  }

  @Test
  void measuresBarsAsALibraryMeasuresLines() {
    Random random = new Random(3);
    for (int i = 0; i < CASES; i++) {
      Bar one = Shapes.bar(random);
      Bar other = Shapes.bar(random);
      double lines = Shapes.line(one).distance(Shapes.line(other));
      assertThat(gap(one, other)).isCloseTo(lines - one.radius() - other.radius(), within(1e-3));
      Disc disc = Shapes.disc(random);
      double fromMiddle = Shapes.line(one).distance(Shapes.point(disc.middle()));
      assertThat(gap(disc, one)).isCloseTo(fromMiddle - one.radius() - disc.radius(), within(1e-3));
    }
  }

  @Test
  void measuresBarsFromEllipsesBetweenPolygons() {
    Random random = new Random(5);
    for (int i = 0; i < CASES; i++) {
      Bar bar = Shapes.bar(random);
      Ellipse ellipse = Shapes.ellipse(random);
      double gap = gap(bar, ellipse);
      double most = Shapes.line(bar).distance(Shapes.inside(ellipse)) - bar.radius();
      double least = Shapes.line(bar).distance(Shapes.around(ellipse)) - bar.radius();
      assertThat(gap).isLessThanOrEqualTo(most + 0.01);
      if (least > -bar.radius()) {
        assertThat(gap).isGreaterThanOrEqualTo(least - 0.2);
      }
    }
  }

  @Test
  void measuresDiscsFromHalfShelves() {
    Random random = new Random(6);
    Slab half = (Slab) ShelfLaying.half(540_000, 3_000).footprint();
    var polygon = Shapes.halfDisc(270_000, 1_500, 2000);
    double sagitta = 270_000 * (1 - Math.cos(Math.PI / 2000));
    for (int i = 0; i < CASES; i++) {
      Vector at = Shapes.spot(random, 400_000);
      double fromPolygon = polygon.distance(Shapes.point(at));
      Disc disc = new Disc((long) at.x(), (long) at.y(), 40_000);
      if (fromPolygon > 0) {
        assertThat(gap(half, disc))
            .isBetween(fromPolygon - 20_000 - sagitta - 0.2, fromPolygon - 20_000 + 0.2);
      } else {
        assertThat(gap(half, disc)).isLessThan(-20_000 + 0.2);
      }
    }
  }

  @Test
  void decidesAsItMeasures() {
    Random random = new Random(7);
    for (int i = 0; i < CASES; i++) {
      List<Footprint> pool =
          List.of(
              Shapes.ellipse(random),
              Shapes.ellipse(random),
              Shapes.disc(random),
              Shapes.bar(random));
      Footprint one = pool.get(random.nextInt(4));
      Footprint other = pool.get(random.nextInt(4));
      double gap = gap(one, other);
      assertThat(Gap.isAtLeast(one, other, (long) Math.floor(gap) - 1)).isTrue();
      assertThat(Gap.isAtLeast(one, other, (long) Math.ceil(gap) + 3)).isFalse();
    }
  }

  @Test
  void doesNotChangeWhenBothAreMoved() {
    Random random = new Random(8);
    for (int i = 0; i < CASES; i++) {
      Ellipse one = Shapes.ellipse(random);
      Ellipse other = Shapes.ellipse(random);
      Vector by = Shapes.spot(random, 300_000);
      assertThat(gap(moved(one, by), moved(other, by))).isCloseTo(gap(one, other), within(0.2));
      assertThat(gap(mirrored(one), mirrored(other))).isCloseTo(gap(one, other), within(0.2));
    }
  }

  private static Ellipse moved(Ellipse ellipse, Vector by) {
    return new Ellipse(
        ellipse.middle().plus(by), ellipse.halfWidth(), ellipse.halfDepth(), ellipse.axis());
  }

  private static Ellipse mirrored(Ellipse ellipse) {
    return new Ellipse(
        new Vector(-ellipse.middle().x(), ellipse.middle().y()),
        ellipse.halfWidth(),
        ellipse.halfDepth(),
        new Vector(-ellipse.axis().x(), ellipse.axis().y()));
  }
}
