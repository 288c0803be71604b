package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shelfful.fixture.RandomDice;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.Region;

class TerritoriesTest {
  private static final double NEAR = 1e-6;

  @Test
  void halvesMeetInTheMiddleOfTheSawCut() {
    Region back = Region.halfDisc(200, Math.PI / 2, 2);
    Region front = Region.halfDisc(200, -Math.PI / 2, 2);
    HalfPlane border = Territories.border(back, front);
    assertThat(border.ny()).isCloseTo(-1, within(NEAR));
    assertThat(border.offset()).isCloseTo(0, within(NEAR));
  }

  @Test
  void slabsSideBySideMeetMidway() {
    Region left = Region.rectangle(-300, -100, -10, 100);
    Region right = Region.rectangle(0, -100, 300, 100);
    HalfPlane border = Territories.border(left, right);
    assertThat(border.nx()).isCloseTo(1, within(NEAR));
    assertThat(border.offset()).isCloseTo(-5, within(NEAR));
  }

  @Test
  void discsMeetOnTheLineBetweenTheirCentres() {
    HalfPlane border = Territories.border(Region.disc(100), Region.disc(300, 0, 150));
    assertThat(border.nx()).isCloseTo(1, within(NEAR));
    assertThat(border.offset()).isCloseTo(125, within(NEAR));
  }

  @Test
  void bothSidesAgreeOnTheBorder() {
    Region left = Region.rectangle(-300, -100, -10, 100);
    Region disc = Region.disc(140, 20, 120);
    HalfPlane there = Territories.border(left, disc);
    HalfPlane back = Territories.border(disc, left);
    assertThat(back.nx()).isCloseTo(-there.nx(), within(NEAR));
    assertThat(back.ny()).isCloseTo(-there.ny(), within(NEAR));
    assertThat(back.offset()).isCloseTo(-there.offset(), within(NEAR));
  }

  /** Discs and slabs that a line between their middles parts for certain. */
  @Test
  void everyBorderParts() {
    RandomDice dice = new RandomDice(11);
    for (int i = 0; i < 100; i++) {
      double radius = dice.number(40, 200);
      double halfWidth = dice.number(40, 200);
      double halfDepth = dice.number(40, 200);
      double far = radius + halfWidth + dice.number(1, 30);
      Region disc = Region.disc(far, dice.number(-halfDepth, halfDepth), radius);
      Region slab = Region.rectangle(2 * halfWidth, 2 * halfDepth);
      HalfPlane border = Territories.border(slab, disc);
      double slabReach = Math.abs(border.nx()) * halfWidth + Math.abs(border.ny()) * halfDepth;
      var bound = disc.boundingDisc();
      double discStart = border.nx() * bound.x() + border.ny() * bound.y() - radius;
      assertThat(slabReach).isLessThanOrEqualTo(border.offset() + NEAR);
      assertThat(discStart).isGreaterThanOrEqualTo(border.offset() - NEAR);
    }
  }
}
