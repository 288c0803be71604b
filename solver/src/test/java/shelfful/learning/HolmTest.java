package shelfful.learning;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class HolmTest {
  /** Worked by hand: the smallest times four, the next times three, and never falling. */
  @Test
  void multipliesByWhatIsLeftAndNeverFalls() {
    assertThat(Holm.adjusted(new double[] {0.04, 0.01, 0.03, 0.005}))
        .containsExactly(new double[] {0.06, 0.03, 0.06, 0.02}, Offset.offset(1e-12));
  }

  @Test
  void neverSaysMoreThanCertain() {
    assertThat(Holm.adjusted(new double[] {0.9, 0.8})).containsExactly(1, 1);
    assertThat(Holm.adjusted(new double[0])).isEmpty();
  }
}
