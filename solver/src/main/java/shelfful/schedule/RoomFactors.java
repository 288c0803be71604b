package shelfful.schedule;

import java.util.Arrays;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * How much more or less room ware of each form takes in one kiln than its estimate says, learned
 * from loads that were full: the factors at which all of them would have held the same, as near as
 * can be, and no further from 1 than that is worth (ridge regression: Hoerl and Kennard 1970).
 */
final class RoomFactors {
  /** A factor that is 1 more or less than 1 weighs as much as a load that is off by a tenth. */
  private static final double HOLD = 0.1;

  private static final double LEAST = 0.4;
  private static final double MOST = 4;

  /** How many loads the first guess counts for. */
  private static final int GUESS_COUNTS = 3;

  private final double[] factors;
  private final double guess;
  private RealMatrix products;
  private RealVector sums;
  private double total;
  private int loads;

  /**
   * All factors are 1 at first.
   *
   * @param forms how many there are, at least 1
   * @param guess how much goes in, by estimate
   */
  RoomFactors(int forms, double guess) {
    this.factors = new double[forms];
    this.products = MatrixUtils.createRealMatrix(forms, forms);
    this.sums = new ArrayRealVector(forms);
    this.guess = guess;
    Arrays.fill(factors, 1);
  }

  /**
   * Learns from a full load.
   *
   * @param estimates by form, of all that went in
   */
  void learn(double[] estimates) {
    RealVector load = new ArrayRealVector(estimates);
    products = products.add(load.outerProduct(load));
    sums = sums.add(load);
    total += Arrays.stream(estimates).sum();
    loads++;
    // (A'A + h I)(w - 1) = A'(c - A 1) with the loads as rows of A and c what goes in.
    double holds = goesIn();
    RealMatrix held =
        products.add(
            MatrixUtils.createRealIdentityMatrix(factors.length)
                .scalarMultiply(HOLD * HOLD * holds * holds));
    RealVector ones = new ArrayRealVector(factors.length, 1.0);
    RealVector off = sums.mapMultiply(holds).subtract(products.operate(ones));
    RealVector found = new CholeskyDecomposition(held).getSolver().solve(off);
    for (int form = 0; form < factors.length; form++) {
      factors[form] = Math.min(MOST, Math.max(LEAST, 1 + found.getEntry(form)));
    }
  }

  /** What to multiply an estimate by. */
  double of(int form) {
    return factors[form];
  }

  /** How much goes in, by estimates so multiplied. */
  double goesIn() {
    return (GUESS_COUNTS * guess + total) / (GUESS_COUNTS + loads);
  }
}
