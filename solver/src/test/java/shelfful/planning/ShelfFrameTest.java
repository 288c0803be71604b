package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shelfful.fixture.RandomDice;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.Pose;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Point;

class ShelfFrameTest {
  private static final double NEAR = 1e-9;

  @Test
  void aTurnedShelfSeesTheChamberTurnedBack() {
    ShelfPlace place =
        new ShelfPlace(java.util.List.of("S"), Point.ofMillimetres(100, 50), Angle.ofDegrees(90));
    double[] seen = ShelfFrame.of(place).toShelf(100, 80);
    // 30 mm away from the loader of a shelf that was turned to the left lies on its right.
    assertThat(seen[0]).isCloseTo(30, within(NEAR));
    assertThat(seen[1]).isCloseTo(0, within(NEAR));
  }

  @Test
  void thereAndBackIsTheSamePlace() {
    RandomDice dice = new RandomDice(4);
    for (int i = 0; i < 200; i++) {
      ShelfFrame frame = frame(dice);
      double x = dice.number(-500, 500);
      double y = dice.number(-500, 500);
      double[] inShelf = frame.toShelf(x, y);
      Pose back = frame.toChamber(new Pose(inShelf[0], inShelf[1], 0.3));
      assertThat(back.x()).isCloseTo(x, within(NEAR));
      assertThat(back.y()).isCloseTo(y, within(NEAR));
      assertThat(back.angle()).isCloseTo(frame.turn() + 0.3, within(NEAR));
    }
  }

  @Test
  void aWallKeepsItsDistanceFromEveryPoint() {
    RandomDice dice = new RandomDice(5);
    for (int i = 0; i < 200; i++) {
      ShelfFrame frame = frame(dice);
      HalfPlane wall = HalfPlane.facing(dice.number(0, 6), dice.number(10, 300));
      double x = dice.number(-500, 500);
      double y = dice.number(-500, 500);
      double[] seen = frame.toShelf(x, y);
      assertThat(distance(frame.toShelf(wall), seen[0], seen[1]))
          .isCloseTo(distance(wall, x, y), within(NEAR));
    }
  }

  private static ShelfFrame frame(RandomDice dice) {
    return new ShelfFrame(dice.number(-300, 300), dice.number(-300, 300), dice.number(-7, 7));
  }

  private static double distance(HalfPlane wall, double x, double y) {
    return wall.nx() * x + wall.ny() * y - wall.offset();
  }
}
