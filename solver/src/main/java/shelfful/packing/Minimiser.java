package shelfful.packing;

import shelfful.geometry.Tolerance;

/**
 * Limited-memory BFGS with a backtracking line search (Nocedal 1980; Liu and Nocedal 1989), tuned
 * to a layout energy: stops as soon as the setting fits, or when the energy has settled above zero.
 */
final class Minimiser {
  private static final int MEMORY = 8;

  /** Steps enough to settle any layout met so far. */
  static final int PATIENT_STEPS = 2000;

  /**
   * Steps enough where there is room to spare; a layout that has not settled by then seldom fits.
   */
  static final int HASTY_STEPS = 80;

  private static final int SETTLING_STEPS = 10;

  /**
   * Energy per squared reach of all bodies over which a short relaxing is given up after ten steps,
   * twenty, and so on. Of 3,700 short relaxings that came to fit, one in a hundred stood higher at
   * each of these; of 13,900 that did not, a third at twenty steps, half at forty, three quarters
   * at sixty.
   */
  private static final double[] TOO_HIGH = {2e-2, 4e-3, 1.4e-3, 7e-4, 2.5e-4, 6.5e-5, 1e-5};

  /** A layout seldom falls further than so many times what it fell in the last ten steps. */
  private static final double STILL_TO_FALL = 4;

  private static final double FIRST_STEP = 0.2;
  private static final int MOST_HALVINGS = 12;

  private final LayoutEnergy energy;
  private int mostSteps = PATIENT_STEPS;
  private final int size;
  private final double longest;
  private final double squaredReach;
  private final double[][] moves = new double[MEMORY][];
  private final double[][] bends = new double[MEMORY][];
  private final double[] scale = new double[MEMORY];
  private final double[] share = new double[MEMORY];
  private final double[] gradient;
  private final double[] nextGradient;
  private final double[] next;
  private final double[] direction;
  private int kept;
  private int newest;
  private double here;

  Minimiser(LayoutEnergy energy) {
    this.energy = energy;
    this.size = energy.unknowns();
    this.gradient = new double[size];
    this.nextGradient = new double[size];
    this.next = new double[size];
    this.direction = new double[size];
    for (int i = 0; i < MEMORY; i++) {
      moves[i] = new double[size];
      bends[i] = new double[size];
    }
    double least = Double.POSITIVE_INFINITY;
    double squares = 0;
    for (int kind : energy.model.kindOf) {
      double reach = energy.model.reach[kind];
      least = Math.min(least, reach);
      squares += reach * reach;
    }
    this.longest = least;
    this.squaredReach = squares;
  }

  /** Takes at most so many steps from now on. */
  void atMost(int steps) {
    mostSteps = steps;
  }

  /** The squared reaches of all bodies: what an energy is measured by. */
  double squaredReach() {
    return squaredReach;
  }

  /** Moves the unknowns to a nearby minimum; returns its energy. */
  double minimise(double[] at) {
    return minimise(at, Double.POSITIVE_INFINITY);
  }

  /**
   * The same, but given up on the way where the minimum promises to be higher than one known.
   *
   * @param known an energy that is to be beaten
   */
  double minimise(double[] at, double known) {
    here = energy.at(at, gradient);
    kept = 0;
    double before = here;
    for (int step = 1; step <= mostSteps && !energy.fits(); step++) {
      if (!advance(at)) {
        break;
      }
      if (step % SETTLING_STEPS == 0) {
        double fall = before - here;
        boolean settled = fall < Tolerance.SETTLED * here;
        if (settled || here - STILL_TO_FALL * fall > known || isTooHigh(step)) {
          break;
        }
        before = here;
      }
    }
    return here;
  }

  private boolean isTooHigh(int step) {
    int looked = step / SETTLING_STEPS - 1;
    return mostSteps == HASTY_STEPS
        && looked < TOO_HIGH.length
        && here > TOO_HIGH[looked] * squaredReach;
  }

  /** One step along the quasi-Newton direction, or down the slope when that fails. */
  private boolean advance(double[] at) {
    aim();
    double slope = dot(direction, gradient);
    if (!(slope < 0)) {
      kept = 0;
      aim();
      slope = dot(direction, gradient);
      if (!(slope < 0)) {
        return false;
      }
    }
    if (search(at, slope)) {
      return true;
    }
    if (kept == 0) {
      energy.at(at, gradient);
      return false;
    }
    kept = 0;
    aim();
    if (search(at, dot(direction, gradient))) {
      return true;
    }
    energy.at(at, gradient);
    return false;
  }

  /** The direction by the two-loop recursion. */
  private void aim() {
    for (int i = 0; i < size; i++) {
      direction[i] = -gradient[i];
    }
    for (int k = 0; k < kept; k++) {
      int m = (newest - k + MEMORY) % MEMORY;
      share[m] = scale[m] * dot(moves[m], direction);
      add(direction, -share[m], bends[m]);
    }
    double first = FIRST_STEP;
    if (kept > 0) {
      first = 1 / (scale[newest] * dot(bends[newest], bends[newest]));
    }
    for (int i = 0; i < size; i++) {
      direction[i] *= first;
    }
    for (int k = kept - 1; k >= 0; k--) {
      int m = (newest - k + MEMORY) % MEMORY;
      add(direction, share[m] - scale[m] * dot(bends[m], direction), moves[m]);
    }
  }

  private boolean search(double[] at, double slope) {
    double largest = 0;
    for (int i = 0; i < size; i++) {
      largest = Math.max(largest, Math.abs(direction[i]));
    }
    double length = largest > longest ? longest / largest : 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      for (int i = 0; i < size; i++) {
        next[i] = at[i] + length * direction[i];
      }
      double there = energy.at(next, nextGradient);
      if (there <= here + Tolerance.SUFFICIENT_DECREASE * length * slope) {
        remember(at);
        here = there;
        return true;
      }
      double guess = -slope * length * length / (2 * (there - here - slope * length));
      length = Math.max(length / 10, Math.min(length / 2, guess));
    }
    return false;
  }

  private void remember(double[] at) {
    int m = kept == 0 ? 0 : (newest + 1) % MEMORY;
    double[] move = moves[m];
    double[] bend = bends[m];
    for (int i = 0; i < size; i++) {
      move[i] = next[i] - at[i];
      bend[i] = nextGradient[i] - gradient[i];
      at[i] = next[i];
      gradient[i] = nextGradient[i];
    }
    double curvature = dot(move, bend);
    double least = Tolerance.LEAST_CURVATURE * Math.sqrt(dot(move, move) * dot(bend, bend));
    if (curvature > least) {
      scale[m] = 1 / curvature;
      newest = m;
      kept = Math.min(MEMORY, kept + 1);
    }
  }

  /** In four sums side by side: one sum alone waits for each addition before the next. */
  private static double dot(double[] a, double[] b) {
    double first = 0;
    double second = 0;
    double third = 0;
    double fourth = 0;
    int i = 0;
    for (; i + 3 < a.length; i += 4) {
      first += a[i] * b[i];
      second += a[i + 1] * b[i + 1];
      third += a[i + 2] * b[i + 2];
      fourth += a[i + 3] * b[i + 3];
    }
    for (; i < a.length; i++) {
      first += a[i] * b[i];
    }
    return first + second + (third + fourth);
  }

  private static void add(double[] to, double factor, double[] what) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * what[i];
    }
  }
}
