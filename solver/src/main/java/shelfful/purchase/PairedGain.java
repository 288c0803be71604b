package shelfful.purchase;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * The mean of paired differences over fixed lists and repeated seeds.
 *
 * <p>The lists are the ones asked about, so only the seeds are chance: the variance of the mean is
 * the mean over lists of each list's own variance over seeds, divided by lists and seeds, with
 * lists × (seeds − 1) degrees of freedom. The interval is Student's ("The probable error of a
 * mean", Biometrika 6 (1908), 1-25). Pieces are whole: a difference is taken to be known no better
 * than a figure rounded to whole numbers is, whose variance is 1/12, however alike the seeds are.
 */
final class PairedGain {
  private static final double UPPER = 0.975;
  private static final double OF_ROUNDING = 1 / 12.0;

  private PairedGain() {}

  /**
   * The gain of some differences.
   *
   * @param differences by list, then by seed; every list with the same number of seeds, at least 2
   */
  static Gain of(double[][] differences) {
    int lists = differences.length;
    int seeds = differences[0].length;
    double mean = Arrays.stream(differences).flatMapToDouble(Arrays::stream).average().orElse(0);
    double within = 0;
    for (double[] list : differences) {
      double middle = Arrays.stream(list).average().orElse(0);
      within += Arrays.stream(list).map(one -> (one - middle) * (one - middle)).sum();
    }
    int freedom = lists * (seeds - 1);
    double error = Math.sqrt(Math.max(OF_ROUNDING, within / freedom) / (lists * seeds));
    double half = error * new TDistribution(null, freedom).inverseCumulativeProbability(UPPER);
    return new Gain(mean, mean - half, mean + half, lists, seeds);
  }
}
