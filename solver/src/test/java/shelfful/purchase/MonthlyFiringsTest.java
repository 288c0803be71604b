package shelfful.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonthlyFiringsTest {
  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNoSum(double wrong) {
    assertThatThrownBy(() -> new MonthlyFirings(wrong, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(String.valueOf(wrong));
    assertThatThrownBy(() -> new MonthlyFirings(1, wrong))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(String.valueOf(wrong));
  }

  /** 12 firings of 50 pieces are 600 pieces; with 10 more in each, 10 firings hold them. */
  @Test
  void savesTheFiringsThatAreNotNeededAnyMore() {
    assertThat(new MonthlyFirings(12, 25).saved(50, 10)).isCloseTo(2 * 25, within(1e-9));
    assertThat(new MonthlyFirings(12, 25).saved(50, -1)).isZero();
  }
}
