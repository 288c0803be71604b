package shelfful.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {
  private static final double LEVEL = 0.95;

  /**
   * R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of seven
   * methods", Stat. Med. 17 (1998), 857-872, table I: methods 3 (score without continuity
   * correction) and 5 (exact). Values from memory, checked here by a second formula and by a
   * library.
   */
  @ParameterizedTest(name = "{0} of {1}")
  @CsvSource({
    "81, 263, 0.2553, 0.3662, 0.2527, 0.3676",
    "15, 148, 0.0624, 0.1605, 0.0578, 0.1617",
    "0, 20, 0.0000, 0.1611, 0.0000, 0.1684",
    "1, 29, 0.0061, 0.1718, 0.0009, 0.1776"
  })
  void agreesWithThePublishedTable(
      int flawed, int of, double low, double high, double exactLow, double exactHigh) {
    Proportion proportion = new Proportion(flawed, of);
    Interval wilson = proportion.wilson(LEVEL);
    Interval exact = proportion.exact(LEVEL);

    assertThat(wilson.low()).isCloseTo(low, within(0.00005));
    assertThat(wilson.high()).isCloseTo(high, within(0.00005));
    assertThat(exact.low()).isCloseTo(exactLow, within(0.00005));
    assertThat(exact.high()).isCloseTo(exactHigh, within(0.00005));
  }

  @Test
  void agreesWithAReferenceLibrary() {
    for (int of : new int[] {5, 30, 400}) {
      for (int flawed = 1; flawed < of; flawed += 1 + of / 10) {
        Proportion proportion = new Proportion(flawed, of);
        ConfidenceInterval wilson = new WilsonScoreInterval().createInterval(of, flawed, LEVEL);
        ConfidenceInterval exact = new ClopperPearsonInterval().createInterval(of, flawed, LEVEL);
        assertThat(proportion.wilson(LEVEL).low()).isCloseTo(wilson.getLowerBound(), within(1e-9));
        assertThat(proportion.wilson(LEVEL).high()).isCloseTo(wilson.getUpperBound(), within(1e-9));
        assertThat(proportion.exact(LEVEL).low()).isCloseTo(exact.getLowerBound(), within(1e-6));
        assertThat(proportion.exact(LEVEL).high()).isCloseTo(exact.getUpperBound(), within(1e-6));
      }
    }
  }

  /** What defines the score interval: at its ends the rate lies just z standard errors off. */
  @Test
  void scoreEndsLieTwoStandardErrorsOff() {
    Proportion proportion = new Proportion(7, 60);
    for (double end :
        new double[] {proportion.wilson(LEVEL).low(), proportion.wilson(LEVEL).high()}) {
      double error = Math.sqrt(end * (1 - end) / 60);
      assertThat(Math.abs(proportion.rate() - end) / error).isCloseTo(1.959964, within(1e-5));
    }
  }

  /** What defines the exact interval: at its ends the tail of the binomial is just a fortieth. */
  @Test
  void exactEndsLeaveAFortiethInEachTail() {
    Interval exact = new Proportion(7, 60).exact(LEVEL);
    double above = 1 - new BinomialDistribution(null, 60, exact.low()).cumulativeProbability(6);
    double below = new BinomialDistribution(null, 60, exact.high()).cumulativeProbability(7);
    assertThat(above).isCloseTo(0.025, within(1e-6));
    assertThat(below).isCloseTo(0.025, within(1e-6));
  }

  @Test
  void saysNothingOfNothing() {
    Proportion nothing = new Proportion(0, 0);
    assertThat(nothing.wilson(LEVEL)).isEqualTo(new Interval(0, 1));
    assertThat(nothing.exact(LEVEL)).isEqualTo(new Interval(0, 1));
    assertThat(nothing.isTooFew()).isTrue();
  }

  /** Averaged over rates, the score interval holds the truth about as often as it says. */
  @Test
  void coversTheTruthAtItsRate() {
    double covered = 0;
    double exactly = 1;
    int rates = 0;
    for (double truth = 0.02; truth < 0.5; truth += 0.02) {
      BinomialDistribution pieces = new BinomialDistribution(null, 80, truth);
      double wilson = 0;
      double exact = 0;
      for (int flawed = 0; flawed <= 80; flawed++) {
        Proportion seen = new Proportion(flawed, 80);
        wilson += seen.wilson(LEVEL).holds(truth) ? pieces.probability(flawed) : 0;
        exact += seen.exact(LEVEL).holds(truth) ? pieces.probability(flawed) : 0;
      }
      covered += wilson;
      exactly = Math.min(exactly, exact);
      rates++;
    }
    assertThat(covered / rates).isCloseTo(LEVEL, within(0.01));
    assertThat(exactly).isGreaterThanOrEqualTo(LEVEL);
  }
}
