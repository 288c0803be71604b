package shelfful.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class RegionTest {
  @Test
  void hasTheAreaOfItsFigure() {
    assertThat(Region.disc(100).area()).isCloseTo(Math.PI * 1e4, within(1e-6));
    assertThat(Region.rectangle(300, 200).area()).isCloseTo(60_000, within(1e-6));
    assertThat(Region.oval(30, 20).area()).isCloseTo(600 * Math.PI, within(1e-9));
    // area of a regular n-gon of inradius r is n r² tan(pi/n)
    assertThat(Region.regularPolygon(10, 292, 0).area())
        .isCloseTo(10 * 292 * 292 * Math.tan(Math.PI / 10), within(1e-5));
  }

  @Test
  void neverUnderstatesTheAreaOfAMixedRegion() {
    double half = Math.PI * 1e4 / 2;
    assertThat(Region.halfDisc(100, 0, 0).area()).isBetween(half, 1.0005 * half);
    double beyondCut = 1e4 * Math.acos(0.1) - 10 * Math.sqrt(1e4 - 100);
    assertThat(Region.halfDisc(100, 1, 10).area()).isBetween(beyondCut, 1.0005 * beyondCut);
  }

  @Test
  void shrinksExactlyWhereItCan() {
    assertThat(Region.disc(100).extent(30).area()).isCloseTo(Math.PI * 4900, within(1e-6));
    assertThat(Region.disc(100).extent(101).empty()).isTrue();
    Extent rectangle = Region.rectangle(300, 200).extent(40);
    assertThat(rectangle.area()).isCloseTo(220 * 120, within(1e-6));
    assertThat(rectangle.perimeter()).isCloseTo(680, within(1e-6));
    assertThat(rectangle.diameter()).isCloseTo(Math.hypot(220, 120), within(1e-6));
    assertThat(Region.rectangle(300, 200).extent(101).empty()).isTrue();
  }

  @Test
  void growsAfterSteiner() {
    Extent grown = Region.rectangle(300, 200).extent(-10);
    assertThat(grown.area()).isCloseTo(60_000 + 10_000 + Math.PI * 100, within(1e-6));
    assertThat(grown.perimeter()).isCloseTo(1000 + 20 * Math.PI, within(1e-6));
  }

  @Test
  void isHeldByItsBoundingDisc() {
    DiscBound half = Region.halfDisc(100, Math.PI / 2, 0).boundingDisc();
    assertThat(Math.hypot(half.x() - 100, half.y())).isLessThanOrEqualTo(half.radius());
    assertThat(Region.rectangle(60, 80).boundingRadius()).isCloseTo(50, within(1e-9));
  }

  @Test
  void keepsWhatLiesInTheDirectionItFaces() {
    Region back = Region.halfDisc(100, Math.PI / 2, 5);
    assertThat(Gap.inside(Disc.of(10), Pose.at(0, 50), back)).isCloseTo(35, within(1e-9));
    assertThat(Gap.inside(Disc.of(10), Pose.at(0, -50), back)).isNegative();
  }

  @Test
  void refusesToStayOpen() {
    assertThatThrownBy(() -> new Region(List.of(new HalfPlane(1, 0, 5))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("leave it open");
  }

  @Test
  void makesNormalsUnitVectors() {
    HalfPlane wall = new HalfPlane(3, 4, 10);
    assertThat(wall).isEqualTo(new HalfPlane(0.6, 0.8, 2));
    assertThatThrownBy(() -> new HalfPlane(0, 0, 1)).hasMessageContaining("zero");
  }
}
