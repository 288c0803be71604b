package shelfful.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PairedGainTest {
  /** With one list it is Student's interval of a mean: 1, 2, 3, 4, 5 has 3 ± 2.776 × √2.5/√5. */
  @Test
  void isStudentsIntervalForOneList() {
    Gain gain = PairedGain.of(new double[][] {{1, 2, 3, 4, 5}});
    assertThat(gain.mean()).isEqualTo(3);
    assertThat(gain.high() - gain.mean()).isCloseTo(2.776445 * Math.sqrt(0.5), within(1e-5));
  }

  /** Lists that gain differently are no noise: only what differs from seed to seed is. */
  @Test
  void differencesBetweenListsAreNoNoise() {
    Gain near = PairedGain.of(new double[][] {{0, 1}, {0, 1}});
    Gain far = PairedGain.of(new double[][] {{0, 1}, {40, 41}});
    assertThat(far.high() - far.low()).isCloseTo(near.high() - near.low(), within(1e-12));
  }

  @Test
  void neverClaimsToKnowBetterThanWholePieces() {
    Gain gain = PairedGain.of(new double[][] {{1, 1}});
    assertThat(gain.low()).isLessThan(0);
    assertThat(gain.isClear()).isFalse();
    assertThat(PairedGain.of(new double[][] {{9, 9}}).isClear()).isTrue();
  }

  /** Nothing but noise is called a clear gain in one case of forty. */
  @Test
  void callsNoiseAGainAsRarelyAsItSays() {
    SplittableRandom chance = new SplittableRandom(11);
    int clear = 0;
    int cases = 4000;
    for (int i = 0; i < cases; i++) {
      double[][] noise = new double[3][3];
      for (double[] list : noise) {
        for (int seed = 0; seed < 3; seed++) {
          double sum = 0;
          for (int k = 0; k < 12; k++) {
            sum += chance.nextDouble();
          }
          list[seed] = 3 * (sum - 6);
        }
      }
      clear += PairedGain.of(noise).isClear() ? 1 : 0;
    }
    assertThat((double) clear / cases).isCloseTo(0.025, within(0.0075));
  }
}
