package shelfful.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shelfful.kiln.FloorPlan;
import shelfful.measure.Length;
import shelfful.measure.Point;

class RingTest {
  private static final FloorPlan ROUND = new FloorPlan.Round(Length.ofMillimetres(600));
  private static final FloorPlan RECTANGLE =
      new FloorPlan.Rectangle(Length.ofMillimetres(800), Length.ofMillimetres(500));

  @Test
  void theMiddleIsTheCentreAndTheWallTheEdge() {
    assertThat(Ring.of(ROUND, Point.ORIGIN)).isEqualTo(Ring.CENTRE);
    assertThat(Ring.of(ROUND, Point.ofMillimetres(0, 210))).isEqualTo(Ring.BETWEEN);
    assertThat(Ring.of(ROUND, Point.ofMillimetres(-299, 0))).isEqualTo(Ring.EDGE);
    assertThat(Ring.of(RECTANGLE, Point.ofMillimetres(0, 249))).isEqualTo(Ring.EDGE);
  }

  /** Points thrown evenly fall into each ring equally often, which is what equal area means. */
  @Test
  void ringsAreEquallyLarge() {
    SplittableRandom chance = new SplittableRandom(1);
    int[] round = new int[3];
    int[] rectangle = new int[3];
    int inside = 0;
    for (int i = 0; i < 30_000; i++) {
      Point at =
          Point.ofMillimetres(
              300 * (2 * chance.nextDouble() - 1), 300 * (2 * chance.nextDouble() - 1));
      if (Math.hypot(at.x().millimetres(), at.y().millimetres()) <= 300) {
        round[Ring.of(ROUND, at).ordinal()]++;
        inside++;
      }
      Point wide =
          Point.ofMillimetres(
              400 * (2 * chance.nextDouble() - 1), 250 * (2 * chance.nextDouble() - 1));
      rectangle[Ring.of(RECTANGLE, wide).ordinal()]++;
    }
    for (int ring = 0; ring < 3; ring++) {
      assertThat((double) round[ring] / inside).isCloseTo(1 / 3.0, within(0.015));
      assertThat(rectangle[ring] / 30_000.0).isCloseTo(1 / 3.0, within(0.015));
    }
  }
}
