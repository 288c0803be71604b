package shelfful.ui.shelfview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shelfful.drawing.Spot;
import shelfful.ui.shelfview.ShelfViewport.Paper;
import shelfful.ui.shelfview.ShelfViewport.Size;

class ShelfViewportTest {
  private static final Paper A4 = new Paper(new Size(210, 297), 1);
  private static final Size SCREEN = new Size(640, 480);

  private final ShelfViewport fitted = ShelfViewport.fitted(A4, SCREEN);

  @Test
  void theFittedSheetLiesWholeAndInTheMiddle() {
    assertThat(fitted.screenX(0)).isGreaterThan(0);
    assertThat(fitted.screenX(210)).isLessThan(640);
    assertThat(fitted.screenX(105)).isCloseTo(320, within(1e-9));
    assertThat(fitted.screenY(0)).isCloseTo(12, within(1e-9));
    assertThat(fitted.screenY(297)).isCloseTo(468, within(1e-9));
  }

  @Test
  void zoomingKeepsWhatLiesUnderThePointer() {
    SplittableRandom chance = new SplittableRandom(20260601);
    ShelfViewport near = fitted.zoomed(4, 320, 240);
    for (int i = 0; i < 200; i++) {
      double x = chance.nextDouble(200, 440);
      double y = chance.nextDouble(150, 330);
      Spot before = near.toPaper(x, y);
      ShelfViewport nearer = near.zoomed(chance.nextDouble(1, 1.6), x, y);
      assertThat(nearer.screenX(before.x())).isCloseTo(x, within(1e-6));
      assertThat(nearer.screenY(before.y())).isCloseTo(y, within(1e-6));
    }
  }

  @Test
  void placesGoToPaperAndBack() {
    ShelfViewport near = fitted.zoomed(3, 100, 100).pushed(-37, 12);
    Spot spot = near.toPaper(123, 321);
    assertThat(near.screenX(spot.x())).isCloseTo(123, within(1e-9));
    assertThat(near.screenY(spot.y())).isCloseTo(321, within(1e-9));
  }

  @Test
  void aPlaceIsBroughtToTheMiddleUnlessThePaperEndsBefore() {
    ShelfViewport near = fitted.zoomed(6, 320, 240).centredOn(new Spot(100, 150));
    assertThat(near.screenX(100)).isCloseTo(320, within(1e-9));
    assertThat(near.screenY(150)).isCloseTo(240, within(1e-9));
    assertThat(near.centredOn(new Spot(0, 0)).screenX(0)).isCloseTo(12, within(1e-9));
    assertThat(fitted.centredOn(new Spot(100, 150))).isEqualTo(fitted);
  }

  @Test
  void neverGoesSmallerThanFittedNorBeyondSixteenTimes() {
    assertThat(fitted.zoomed(0.1, 5, 5)).isEqualTo(fitted);
    assertThat(fitted.zoomed(1000, 320, 240).scale()).isCloseTo(fitted.scale() * 16, within(1e-9));
  }

  @Test
  void thePaperCannotBePushedOutOfSight() {
    ShelfViewport near = fitted.zoomed(4, 320, 240);
    ShelfViewport right = near.pushed(1e6, 1e6);
    assertThat(right.screenX(0)).isCloseTo(12, within(1e-6));
    assertThat(right.screenY(0)).isCloseTo(12, within(1e-6));
    ShelfViewport left = near.pushed(-1e6, -1e6);
    assertThat(left.screenX(210)).isCloseTo(640 - 12, within(1e-6));
    assertThat(left.screenY(297)).isCloseTo(480 - 12, within(1e-6));
  }

  @Test
  void aFittedSheetStaysFittedWhenTheWindowGrowsAndAZoomedOneKeepsItsMiddle() {
    Size larger = new Size(1000, 900);
    assertThat(fitted.through(larger)).isEqualTo(ShelfViewport.fitted(A4, larger));
    ShelfViewport near = fitted.zoomed(6, 320, 240);
    Spot middle = near.toPaper(320, 240);
    ShelfViewport grown = near.through(new Size(700, 520));
    assertThat(grown.scale()).isEqualTo(near.scale());
    assertThat(grown.toPaper(350, 260).x()).isCloseTo(middle.x(), within(1e-9));
    assertThat(grown.toPaper(350, 260).y()).isCloseTo(middle.y(), within(1e-9));
  }

  @Test
  void aSecondSheetLiesUnderTheFirstAndIsReachedByPushing() {
    Paper two = new Paper(new Size(210, 297), 2);
    ShelfViewport first = ShelfViewport.fitted(two, SCREEN);
    assertThat(first.scale()).isEqualTo(fitted.scale());
    assertThat(first.screenY(two.topOf(1)) - first.screenY(297))
        .isCloseTo(Paper.GAP * first.scale(), within(1e-9));
    ShelfViewport second = first.pushed(0, -1e6);
    assertThat(second.screenY(two.topOf(1) + 297)).isCloseTo(480 - 12, within(1e-6));
  }

  @Test
  void aWindowWithoutRoomIsNoFault() {
    ShelfViewport none = ShelfViewport.fitted(A4, new Size(0, 0));
    assertThat(none.scale()).isPositive();
    assertThat(none.through(SCREEN)).isEqualTo(fitted);
  }
}
