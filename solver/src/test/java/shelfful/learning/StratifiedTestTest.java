package shelfful.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Test;

class StratifiedTestTest {
  @Test
  void takesMeanAndVarianceOfTheHypergeometricDistribution() {
    StratifiedTest test = new StratifiedTest();
    test.add(new Proportion(5, 20), new Proportion(4, 40));
    test.add(new Proportion(2, 10), new Proportion(1, 25));
    HypergeometricDistribution one = new HypergeometricDistribution(null, 60, 9, 20);
    HypergeometricDistribution other = new HypergeometricDistribution(null, 35, 3, 10);
    assertThat(test.expected())
        .isCloseTo(one.getNumericalMean() + other.getNumericalMean(), within(1e-9));
    assertThat(test.variance())
        .isCloseTo(one.getNumericalVariance() + other.getNumericalVariance(), within(1e-9));
  }

  /** With one firing and many pieces the chance is near Fisher's, reckoned by counting. */
  @Test
  void comesNearTheExactChanceOfOneLargeFiring() {
    StratifiedTest test = new StratifiedTest();
    test.add(new Proportion(45, 300), new Proportion(50, 500));
    HypergeometricDistribution exact = new HypergeometricDistribution(null, 800, 95, 300);
    double upper = exact.upperCumulativeProbability(45);
    assertThat(test.isWorse()).isTrue();
    assertThat(test.chance()).isCloseTo(2 * upper, within(0.006));
  }

  @Test
  void nothingComparedIsNoSurprise() {
    StratifiedTest test = new StratifiedTest();
    test.add(new Proportion(0, 1), new Proportion(0, 0));
    assertThat(test.chance()).isEqualTo(1);
  }
}
