package shelfful.kiln;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shelfful.measure.Length;

/** Areas against the formulas of single figures as tables give them. */
class ShelfOutlineTest {
  private static final Length SIX_HUNDRED = Length.ofMillimetres(600);
  private static final Length CUT = Length.ofMillimetres(3);

  private static void isArea(ShelfOutline outline, double squareMillimetres) {
    assertThat(outline.squareMillimetres()).isCloseTo(squareMillimetres, within(1e-6));
  }

  @Test
  void aDiscAndItsPartsHaveTheAreaOfTheCircle() {
    double whole = Math.PI * 300 * 300;
    isArea(new ShelfOutline.FullRound(SIX_HUNDRED), whole);
    isArea(new ShelfOutline.HalfRound(SIX_HUNDRED, CUT), whole / 2);
    isArea(new ShelfOutline.QuarterRound(SIX_HUNDRED, CUT), whole / 4);
  }

  @Test
  void aHexagonAndAnOctagonHaveTheAreasThatFollowFromTheirWidth() {
    // Six triangles of side d/√3: √3/2 d². A square less four corners: 2 (√2 − 1) d².
    double hexagon = Math.sqrt(3) / 2 * 600 * 600;
    isArea(new ShelfOutline.Polygon(6, SIX_HUNDRED), hexagon);
    isArea(new ShelfOutline.HalfPolygon(6, SIX_HUNDRED, CUT), hexagon / 2);
    isArea(new ShelfOutline.Polygon(8, SIX_HUNDRED), 2 * (Math.sqrt(2) - 1) * 600 * 600);
  }

  @Test
  void aRectangleIsItsSidesMultiplied() {
    isArea(new ShelfOutline.Rectangle(SIX_HUNDRED, Length.ofMillimetres(300)), 180_000);
  }
}
