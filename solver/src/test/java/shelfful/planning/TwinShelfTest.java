package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import shelfful.fixture.PlanShapes;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Against outlines drawn with JTS: two shelves are the joined one without its joint. */
class TwinShelfTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static ShelfPlace place(double x, double y, double degrees) {
    return new ShelfPlace(List.of("S"), Point.ofMillimetres(x, y), Angle.ofDegrees(degrees));
  }

  private static Shelf shelf(ShelfOutline outline) {
    return new Shelf("S", "S", outline, mm(10), Optional.empty(), Optional.empty(), 2);
  }

  static List<Arguments> pairs() {
    ShelfOutline half = new ShelfOutline.HalfRound(mm(540), mm(6));
    ShelfOutline quarter = new ShelfOutline.QuarterRound(mm(540), mm(6));
    ShelfOutline polygon = new ShelfOutline.HalfPolygon(10, mm(500), mm(8));
    ShelfOutline slab = new ShelfOutline.Rectangle(mm(305), mm(610));
    return List.of(
        Arguments.of(half, place(0, 0, 0), place(0, 0, 180)),
        Arguments.of(half, place(10, -20, 250), place(10, -20, 70)),
        Arguments.of(quarter, place(0, 0, 30), place(0, 0, 120)),
        Arguments.of(polygon, place(5, 5, 90), place(5, 5, 270)),
        Arguments.of(slab, place(158, 0, 0), place(-158, 0, 0)),
        Arguments.of(slab, place(158, 0, 180), place(-158, 0, 0)),
        Arguments.of(slab, place(20, 320, 0), place(20, -300, 0)),
        Arguments.of(slab, place(0, 158, 90), place(0, -158, 90)));
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void bothTogetherAreTheWholeWithoutTheJoint(
      ShelfOutline outline, ShelfPlace first, ShelfPlace second) {
    TwinShelf twin =
        TwinShelf.of(shelf(outline), first, second)
            .or(() -> TwinShelf.of(shelf(outline), second, first))
            .orElseThrow();
    boolean inOrder = TwinShelf.of(shelf(outline), first, second).isPresent();
    Geometry one = PlanShapes.shelf(outline, inOrder ? first : second);
    Geometry other = PlanShapes.shelf(outline, inOrder ? second : first);
    Geometry whole = PlanShapes.shelf(twin.outline(), twin.place(List.of("S")));
    ShelfFrame frame = ShelfFrame.of(twin.place(List.of("S")));
    Joint joint = new Joint(twin.strip(), twin.across(), OptionalLong.empty());
    Random random = new Random(3);
    int near = 0;
    for (int i = 0; i < 4000; i++) {
      double x = 800 * random.nextDouble() - 400;
      double y = 1400 * random.nextDouble() - 700;
      double[] there = frame.toShelf(x, y);
      double across = twin.across() ? there[0] : there[1];
      boolean onJoint = Math.abs(across) <= twin.strip().radius();
      org.locationtech.jts.geom.Point at = FACTORY.createPoint(new Coordinate(x, y));
      // Drawn arcs are polygons: nothing is said of points next to an edge.
      boolean edge =
          one.getBoundary().distance(at) < 1
              || other.getBoundary().distance(at) < 1
              || whole.getBoundary().distance(at) < 1;
      if (!edge) {
        boolean onFirst = joint.isOnFirst(there[0], there[1]);
        boolean on = whole.contains(at) && !onJoint;
        assertThat(one.contains(at)).isEqualTo(on && onFirst);
        assertThat(other.contains(at)).isEqualTo(on && !onFirst);
        near += on ? 1 : 0;
      }
    }
    assertThat(near).isGreaterThan(300);
  }

  @Test
  void shelvesThatLieApartDoNotJoin() {
    Shelf slab = shelf(new ShelfOutline.Rectangle(mm(300), mm(300)));
    ShelfPlace middle = place(0, 0, 0);
    assertThat(TwinShelf.of(slab, place(400, 0, 0), middle)).isEmpty();
    assertThat(TwinShelf.of(slab, place(310, 1, 0), middle)).isEmpty();
    assertThat(TwinShelf.of(slab, place(310, 0, 45), middle)).isEmpty();
    assertThat(TwinShelf.of(slab, place(310, 0, 0), middle)).isPresent();
    Shelf round = shelf(new ShelfOutline.FullRound(mm(300)));
    assertThat(TwinShelf.of(round, place(310, 0, 0), middle)).isEmpty();
    Shelf half = shelf(new ShelfOutline.HalfRound(mm(300), mm(4)));
    assertThat(TwinShelf.of(half, place(0, 0, 90), middle)).isEmpty();
    assertThat(TwinShelf.of(half, place(0, 10, 180), middle)).isEmpty();
  }
}
