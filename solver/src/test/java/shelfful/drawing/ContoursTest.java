package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

class ContoursTest {
  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static ShelfPlace place(double x, double y, double turn) {
    return new ShelfPlace(List.of("any"), Point.ofMillimetres(x, y), Angle.ofDegrees(turn));
  }

  private static Polygon polygon(List<Point> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i <= corners.size(); i++) {
      Point corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.x().millimetres(), corner.y().millimetres());
    }
    return new GeometryFactory().createPolygon(ring);
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 8, 10, 12, 24})
  void hasTheAreaOfARegularPolygonWithAFlatSideToTheFront(int sides) {
    List<Point> corners = Contours.of(new FloorPlan.Polygon(sides, mm(584)));
    // n (d/2)² tan(π/n), elementary geometry.
    double area = sides * 292.0 * 292.0 * Math.tan(Math.PI / sides);
    assertThat(polygon(corners).getArea()).isCloseTo(area, within(1.0));
    assertThat(corners.stream().filter(corner -> Math.abs(corner.y().millimetres() + 292) < 0.01))
        .hasSize(2);
  }

  @Test
  void cutsHalvesAndQuartersAlongTheSaw() {
    Polygon half =
        polygon(Contours.of(new ShelfOutline.HalfRound(mm(500), mm(4)), place(0, 0, 90)));
    // Turned by a quarter the half lies on the left.
    assertThat(half.getEnvelopeInternal().getMaxX()).isCloseTo(-2, within(0.01));
    assertThat(half.getEnvelopeInternal().getMinX()).isCloseTo(-250, within(0.1));
    Polygon quarter =
        polygon(Contours.of(new ShelfOutline.QuarterRound(mm(500), mm(0)), place(10, 20, 0)));
    assertThat(quarter.getArea()).isCloseTo(Math.PI * 250 * 250 / 4, within(50.0));
    assertThat(quarter.getEnvelopeInternal().getMinX()).isCloseTo(10, within(0.01));
    assertThat(quarter.getEnvelopeInternal().getMinY()).isCloseTo(20, within(0.01));
  }

  @Test
  void turnsRectanglesAnticlockwise() {
    Polygon slab =
        polygon(Contours.of(new ShelfOutline.Rectangle(mm(300), mm(600)), place(0, 0, 90)));
    assertThat(slab.getEnvelopeInternal().getWidth()).isCloseTo(600, within(0.01));
    assertThat(slab.getEnvelopeInternal().getHeight()).isCloseTo(300, within(0.01));
  }

  @Test
  void saysWhichOutlinesLieOverEachOther() {
    List<Point> full = Contours.of(new ShelfOutline.FullRound(mm(500)), place(0, 0, 0));
    List<Point> left = Contours.of(new ShelfOutline.HalfRound(mm(500), mm(4)), place(0, 0, 90));
    List<Point> right = Contours.of(new ShelfOutline.HalfRound(mm(500), mm(4)), place(0, 0, 270));
    assertThat(Contact.overlap(full, left)).isTrue();
    assertThat(Contact.overlap(left, right)).isFalse();
    assertThat(Contact.isOver(left, Point.ofMillimetres(0, 100), 19)).isTrue();
    assertThat(Contact.isOver(left, Point.ofMillimetres(40, 100), 19)).isFalse();
  }

  @Test
  void cutsOutlinesToTheShownPartOfTheChamber() {
    ViewClip clip = new ViewClip(new Box(0, 0, 10, 10));
    List<Spot> diamond =
        List.of(new Spot(5, -5), new Spot(15, 5), new Spot(5, 15), new Spot(-5, 5));
    assertThat(clip.runs(diamond)).isEmpty();
    List<Spot> square = List.of(new Spot(5, 5), new Spot(15, 5), new Spot(15, 15), new Spot(5, 15));
    assertThat(clip.convex(square))
        .containsExactlyInAnyOrder(
            new Spot(5, 5), new Spot(10, 5), new Spot(10, 10), new Spot(5, 10));
    assertThat(clip.runs(square))
        .containsExactlyInAnyOrder(
            List.of(new Spot(5, 5), new Spot(10, 5)), List.of(new Spot(5, 10), new Spot(5, 5)));
  }
}
