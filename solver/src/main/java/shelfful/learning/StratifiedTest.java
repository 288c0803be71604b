package shelfful.learning;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Whether some pieces come out otherwise than those that were in the same firings with them: what a
 * firing does to all its pieces is not held against a place in the kiln.
 *
 * <p>N. Mantel and W. Haenszel, "Statistical aspects of the analysis of data from retrospective
 * studies of disease", J. Natl. Cancer Inst. 22 (1959), 719-748: in each firing the number of
 * flawed pieces of the cell is compared with its hypergeometric mean and variance, and the sums
 * with the normal distribution, with a continuity correction of one half.
 */
final class StratifiedTest {
  private double seen;
  private double expected;
  private double variance;

  /**
   * Adds one firing.
   *
   * @param cell pieces of the cell
   * @param rest all other pieces
   */
  void add(Proportion cell, Proportion rest) {
    double all = cell.of() + rest.of();
    double flawed = cell.flawed() + rest.flawed();
    if (all < 2) {
      return;
    }
    seen += cell.flawed();
    expected += cell.of() * flawed / all;
    variance += cell.of() * rest.of() * flawed * (all - flawed) / (all * all * (all - 1));
  }

  /** How many flawed pieces the cell would have if it were like the rest. */
  double expected() {
    return expected;
  }

  double variance() {
    return variance;
  }

  boolean isWorse() {
    return seen > expected;
  }

  /** How likely chance alone makes a difference as large, either way. */
  double chance() {
    if (variance <= 0) {
      return 1;
    }
    double z = Math.max(0, Math.abs(seen - expected) - 0.5) / Math.sqrt(variance);
    return Math.min(1, 2 * (1 - new NormalDistribution(0, 1).cumulativeProbability(z)));
  }
}
