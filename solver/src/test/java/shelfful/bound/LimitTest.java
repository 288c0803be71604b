package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LimitTest {

  @Test
  void roundingOfTextbookInequality() {
    // 3x + 5y <= 7 in units of 3: x + 5/3 y <= 7/3, so x + (1 + (2/3 - 1/3)/(2/3)) y <= 2
    Limit rounded = new Limit(LimitCause.AREA, new double[] {3, 5}, 7).rounded(3);
    assertThat(rounded.shares()[0]).isEqualTo(1);
    assertThat(rounded.shares()[1]).isCloseTo(1.5, within(1e-6));
    assertThat(rounded.room()).isEqualTo(2);
  }

  /** All whole numbers of three kinds that keep a limit keep each of its roundings. */
  @Test
  void roundingCutsOffNothingWhole() {
    Random random = new Random(4);
    int atTheRoom = 0;
    for (int trial = 0; trial < 300; trial++) {
      double[] shares = {1 + random.nextDouble() * 9, 1 + random.nextDouble() * 9, 2};
      Limit limit = new Limit(LimitCause.SPACING, shares, 10 + random.nextDouble() * 20);
      Limit rounded = limit.rounded(shares[random.nextInt(3)] / (1 + random.nextInt(2)));
      for (int a = 0; a * shares[0] <= limit.room(); a++) {
        for (int b = 0; a * shares[0] + b * shares[1] <= limit.room(); b++) {
          int c = (int) Math.floor((limit.room() - a * shares[0] - b * shares[1]) / shares[2]);
          double taken =
              a * rounded.shares()[0] + b * rounded.shares()[1] + c * rounded.shares()[2];
          assertThat(taken).isLessThanOrEqualTo(rounded.room() + 1e-6);
          atTheRoom += taken > rounded.room() - 1e-6 ? 1 : 0;
        }
      }
    }
    assertThat(atTheRoom).as("settings that reach their rounded limit").isPositive();
  }
}
