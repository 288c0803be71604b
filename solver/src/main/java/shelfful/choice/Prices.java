package shelfful.choice;

/**
 * A price for a place of each kind, found by Lagrangian relaxation (A. M. Geoffrion, "Lagrangean
 * relaxation for integer programming", Math. Programming Study 2, 1974) with subgradient steps (M.
 * Held, P. Wolfe, H. P. Crowder, "Validation of subgradient optimization", Math. Programming 6,
 * 1974): the dearest stacks at these prices, and what buyers gain on top, together are never less
 * than the best choice from the pool. Scarce kinds come to cost nothing, plentiful ones as much as
 * their room is worth.
 */
public final class Prices {
  private static final double STEP = 1.2;
  private static final double SHORTER = 0.93;

  private final ChoiceProblem problem;
  private double[] best;
  private double least = Double.POSITIVE_INFINITY;

  /** Starts from what each kind's worthiest piece is worth. */
  public Prices(ChoiceProblem problem) {
    this.problem = problem;
    this.best = new double[problem.worth().kinds()];
    for (int kind = 0; kind < best.length; kind++) {
      best[kind] = problem.worth().dearest(kind) * 0.7;
    }
  }

  /** The price of each kind. */
  public double[] each() {
    return best;
  }

  /** No choice from the pool, as it was when the prices settled, is worth more. */
  public double limit() {
    return least;
  }

  /**
   * Settles the prices for the pool as it is now.
   *
   * @param known the worth of the best choice so far
   */
  public void settle(LayerPool pool, int rounds, double known) {
    PricedStacks stacks = new PricedStacks(problem, pool);
    double[] prices = best.clone();
    least = Double.POSITIVE_INFINITY;
    double step = STEP;
    int[] nothing = new int[prices.length];
    for (int round = 0; round < rounds; round++) {
      stacks.at(prices);
      double limit = stacks.total() + problem.worth().gain(nothing, prices);
      if (limit < least) {
        least = limit;
        best = prices.clone();
      } else {
        step *= SHORTER;
      }
      if (!move(prices, stacks.used(), step, limit - known)) {
        return;
      }
    }
  }

  private boolean move(double[] prices, int[] used, double step, double gap) {
    double[] lacking = new double[prices.length];
    double square = 0;
    for (int kind = 0; kind < prices.length; kind++) {
      lacking[kind] = problem.worth().wanted(kind, 0, prices[kind]) - used[kind];
      square += lacking[kind] * lacking[kind];
    }
    if (square == 0 || gap <= 0) {
      return false;
    }
    double length = step * gap / square;
    for (int kind = 0; kind < prices.length; kind++) {
      double moved = prices[kind] + length * lacking[kind];
      prices[kind] = Math.max(0, Math.min(problem.worth().dearest(kind), moved));
    }
    return true;
  }
}
