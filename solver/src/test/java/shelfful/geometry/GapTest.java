package shelfful.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class GapTest {
  private static final double EXACT = 1e-9;

  /** What the brute force may miss between two directions: half a step times the reach, mm. */
  private static final double ONE_STEP_OF_TURN = 0.25;

  private static final int CORNERS = 240;

  @Test
  void isTheDistanceOfCentresLessTheRadiiForDiscs() {
    Disc a = Disc.of(10);
    Disc b = Disc.of(20);
    assertThat(Gap.between(a, Pose.at(0, 0), b, Pose.at(30, 40))).isCloseTo(20, within(EXACT));
    assertThat(Gap.between(a, Pose.at(0, 0), b, Pose.at(18, 24))).isCloseTo(0, within(EXACT));
    assertThat(Gap.between(a, Pose.at(0, 0), b, Pose.at(3, 4))).isCloseTo(-25, within(EXACT));
    assertThat(Gap.between(a, Pose.at(0, 0), b, Pose.at(0, 0))).isCloseTo(-30, within(EXACT));
  }

  @Test
  void seesACapsuleFromItsSideAndFromItsEnd() {
    Capsule bar = new Capsule(-50, 0, 50, 0, 5);
    Disc pot = Disc.of(10);
    assertThat(Gap.between(bar, Pose.at(0, 0), pot, Pose.at(20, 30))).isCloseTo(15, within(EXACT));
    assertThat(Gap.between(bar, Pose.at(0, 0), pot, Pose.at(80, 40))).isCloseTo(35, within(EXACT));
    assertThat(Gap.between(bar, Pose.at(0, 0), pot, Pose.at(10, 0))).isCloseTo(-15, within(EXACT));
  }

  @Test
  void takesTheShortestWayOutOfCrossedCapsules() {
    Capsule bar = new Capsule(-50, 0, 50, 0, 5);
    Pose across = new Pose(0, 30, Math.PI / 2);
    assertThat(Gap.between(bar, Pose.at(0, 0), bar, across)).isCloseTo(-20 - 10, within(EXACT));
    assertThat(Gap.between(bar, Pose.at(0, 0), bar, Pose.at(0, 25))).isCloseTo(15, within(EXACT));
  }

  @Test
  void agreesWithTheAxesOfAnOval() {
    Oval dish = Oval.of(90, 50);
    Disc pot = Disc.of(10);
    assertThat(Gap.between(dish, Pose.at(0, 0), pot, Pose.at(120, 0))).isCloseTo(20, within(EXACT));
    assertThat(Gap.between(dish, Pose.at(0, 0), pot, Pose.at(0, 70))).isCloseTo(10, within(EXACT));
    assertThat(Gap.between(dish, Pose.at(0, 0), pot, Pose.at(0, 0))).isCloseTo(-60, within(EXACT));
    assertThat(Gap.between(dish, Pose.at(0, 0), dish, Pose.at(0, 110)))
        .isCloseTo(10, within(EXACT));
    assertThat(Gap.between(dish, Pose.at(0, 0), dish, Pose.at(0, 0)))
        .isCloseTo(-100, within(EXACT));
  }

  @Test
  void treatsAnOvalOfEqualAxesAsADisc() {
    RandomShapes shapes = new RandomShapes(3);
    for (int i = 0; i < 500; i++) {
      double radius = shapes.between(1, 50);
      Pose here = shapes.pose(100);
      Shape other = shapes.next();
      Pose there = shapes.pose(100);
      assertThat(Gap.between(Oval.of(radius, radius), here, other, there))
          .isCloseTo(Gap.between(Disc.of(radius), here, other, there), within(1e-7));
    }
  }

  @Test
  void liesBetweenInscribedAndCircumscribedPolygonsWhenApart() {
    RandomShapes shapes = new RandomShapes(7);
    int apart = 0;
    for (int i = 0; i < 3000; i++) {
      Shape a = shapes.next();
      Shape b = shapes.next();
      Pose here = shapes.pose(120);
      Pose there = shapes.pose(120);
      double gap = Gap.between(a, here, b, there);
      double most =
          Polygons.inscribed(a, here, CORNERS).distance(Polygons.inscribed(b, there, CORNERS));
      double least =
          Polygons.circumscribed(a, here, CORNERS)
              .distance(Polygons.circumscribed(b, there, CORNERS));
      if (gap > 0) {
        apart++;
        assertThat(gap).isBetween(least - EXACT, most + EXACT);
      } else {
        assertThat(least).as("an overlap must show in the outer polygons").isZero();
      }
    }
    assertThat(apart).isGreaterThan(1000);
  }

  @Test
  void isTheLeastShiftThatSeparatesOverlappingPolygons() {
    RandomShapes shapes = new RandomShapes(11);
    int overlapping = 0;
    for (int i = 0; i < 300; i++) {
      Shape a = shapes.next();
      Shape b = shapes.next();
      Pose here = shapes.pose(30);
      Pose there = shapes.pose(30);
      double gap = Gap.between(a, here, b, there);
      if (gap < 0) {
        overlapping++;
        Geometry inner = Polygons.inscribed(a, here, CORNERS);
        Geometry other = Polygons.inscribed(b, there, CORNERS);
        double tried = separation(inner, other);
        assertThat(gap).isBetween(tried - 0.05, tried + ONE_STEP_OF_TURN);
      }
    }
    assertThat(overlapping).isGreaterThan(100);
  }

  /** Separating-axis depth of two polygons by brute force over directions. */
  private static double separation(Geometry a, Geometry b) {
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 1000; i++) {
      double ux = Math.cos(Math.PI * i / 500);
      double uy = Math.sin(Math.PI * i / 500);
      double most = Double.NEGATIVE_INFINITY;
      for (Coordinate p : a.getCoordinates()) {
        most = Math.max(most, p.x * ux + p.y * uy);
      }
      double least = Double.POSITIVE_INFINITY;
      for (Coordinate p : b.getCoordinates()) {
        least = Math.min(least, p.x * ux + p.y * uy);
      }
      best = Math.max(best, least - most);
    }
    return best;
  }

  @Test
  void isTheSameWhenTheTwoChangePlaces() {
    RandomShapes shapes = new RandomShapes(13);
    for (int i = 0; i < 3000; i++) {
      Shape a = shapes.next();
      Shape b = shapes.next();
      Pose here = shapes.pose(80);
      Pose there = shapes.pose(80);
      assertThat(Gap.between(a, here, b, there))
          .isCloseTo(Gap.between(b, there, a, here), within(1e-7));
    }
  }

  @Test
  void holdsForHugeAndTinySizes() {
    for (double size : new double[] {1e-3, 1, 1e5}) {
      Oval dish = Oval.of(2 * size, size);
      assertThat(Gap.between(dish, Pose.at(0, 0), dish, Pose.at(0, 3 * size)))
          .isCloseTo(size, within(1e-9 * size));
      assertThat(Gap.between(dish, Pose.at(0, 0), dish, new Pose(3.5 * size, 0, Math.PI / 2)))
          .isCloseTo(size / 2, within(1e-9 * size));
    }
  }

  @Test
  void acceptsACapsuleWithoutLength() {
    Capsule knob = new Capsule(3, 4, 3, 4, 5);
    assertThat(Gap.between(knob, Pose.at(0, 0), new Disc(3, 24, 5), Pose.at(0, 0)))
        .isCloseTo(10, within(EXACT));
  }

  @Test
  void measuresTheDepthInsideEachKindOfWall() {
    Region rectangle = Region.rectangle(200, 100);
    assertThat(Gap.inside(Disc.of(10), Pose.at(60, 0), rectangle)).isCloseTo(30, within(EXACT));
    assertThat(Gap.inside(Oval.of(30, 10), new Pose(0, 0, Math.PI / 2), rectangle))
        .isCloseTo(20, within(EXACT));
    assertThat(Gap.inside(Disc.of(10), Pose.at(30, 40), Region.disc(100)))
        .isCloseTo(40, within(EXACT));
    assertThat(Gap.inside(Disc.of(10), Pose.at(30, 0), Region.oval(100, 50)))
        .isCloseTo(nearestOnOval(30, 0, 100, 50) - 10, within(1e-5));
    assertThat(Gap.inside(Disc.of(10), Pose.at(99, 0), Region.disc(100)))
        .isCloseTo(-9, within(EXACT));
  }

  private static double nearestOnOval(double x, double y, double a, double b) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 100_000; i++) {
      double t = 2 * Math.PI * i / 100_000;
      least = Math.min(least, Math.hypot(a * Math.cos(t) - x, b * Math.sin(t) - y));
    }
    return least;
  }

  @Test
  void agreesWithBoundaryPointsInsideRoundAndOvalWalls() {
    RandomShapes shapes = new RandomShapes(17);
    OvalBound wall = new OvalBound(10, -5, 180, 110, 0.7);
    Shape outline = new Oval(10, -5, 180, 110, 0.7);
    Geometry edge = Polygons.inscribed(outline, Pose.HERE, 2000).getBoundary();
    Region oval = new Region(List.of(wall));
    Region disc = Region.disc(4, 5, 150);
    for (int i = 0; i < 250; i++) {
      Shape shape = shapes.next();
      Pose pose = shapes.pose(60);
      Geometry body = Polygons.inscribed(shape, pose, CORNERS);
      double far = 0;
      for (Coordinate p : body.getCoordinates()) {
        far = Math.max(far, Math.hypot(p.x - 4, p.y - 5));
      }
      assertThat(Gap.inside(shape, pose, disc)).isCloseTo(150 - far, within(0.02));
      double inside = Gap.inside(shape, pose, oval);
      if (inside > 0) {
        assertThat(inside).isCloseTo(edge.distance(body), within(0.02));
      }
    }
  }

  @Test
  void refusesShapesThatAreNone() {
    assertThatThrownBy(() -> Disc.of(0)).hasMessageContaining("radius").hasMessageContaining("0.0");
    assertThatThrownBy(() -> Oval.of(10, -1)).hasMessageContaining("half width");
    assertThatThrownBy(() -> new Capsule(0, 0, Double.NaN, 0, 1)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> Pose.at(Double.POSITIVE_INFINITY, 0)).hasMessageContaining("Infinity");
  }
}
