package shelfful.learning;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * So many of so many.
 *
 * @param flawed from 0
 * @param of at least as many
 */
public record Proportion(int flawed, int of) {
  /** With fewer pieces than this a rate is not told: "too few yet". Ours. */
  public static final int FEWEST = 20;

  private static final double BETA_ACCURACY = 1e-12;

  /** Refuses counts out of order. */
  public Proportion {
    if (flawed < 0 || flawed > of) {
      throw new IllegalArgumentException("There cannot be " + flawed + " of " + of);
    }
  }

  /** The share; 0 of 0 is 0. */
  public double rate() {
    return of == 0 ? 0 : (double) flawed / of;
  }

  /** Whether there are too few to tell anything from. */
  public boolean isTooFew() {
    return of < FEWEST;
  }

  /**
   * The score interval, whose average coverage is near the level. E. B. Wilson, "Probable
   * inference, the law of succession, and statistical inference", J. Am. Stat. Assoc. 22 (1927),
   * 209-212; without a continuity correction.
   *
   * @param level of confidence, between 0 and 1, for instance 0.95
   */
  public Interval wilson(double level) {
    if (of == 0) {
      return new Interval(0, 1);
    }
    double z = new NormalDistribution(0, 1).inverseCumulativeProbability((1 + level) / 2);
    double n = of;
    double middle = (flawed + z * z / 2) / (n + z * z);
    double half = z / (n + z * z) * Math.sqrt(flawed * (n - flawed) / n + z * z / 4);
    return new Interval(
        flawed == 0 ? 0 : Math.max(0, middle - half),
        flawed == of ? 1 : Math.min(1, middle + half));
  }

  /**
   * The exact interval, whose coverage is never below the level. C. J. Clopper and E. S. Pearson,
   * "The use of confidence or fiducial limits illustrated in the case of the binomial", Biometrika
   * 26 (1934), 404-413, by quantiles of the beta distribution.
   *
   * @param level of confidence, between 0 and 1, for instance 0.95
   */
  public Interval exact(double level) {
    double tail = (1 - level) / 2;
    double low = flawed == 0 ? 0 : beta(flawed, of - flawed + 1.0, tail);
    double high = flawed == of ? 1 : beta(flawed + 1.0, of - flawed, 1 - tail);
    return new Interval(low, high);
  }

  private static double beta(double alpha, double beta, double share) {
    return new BetaDistribution(null, alpha, beta, BETA_ACCURACY)
        .inverseCumulativeProbability(share);
  }

  Proportion plus(boolean isFlawed) {
    return new Proportion(flawed + (isFlawed ? 1 : 0), of + 1);
  }
}
