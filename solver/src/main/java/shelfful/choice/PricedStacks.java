package shelfful.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The dearest stacks at given prices: for each column and each height left, in steps of 2 mm, what
 * the columns from here upwards can hold at most. Heights are rounded down, so no stack is missed.
 */
final class PricedStacks {
  private static final double UNIT = 2000;

  private final ChoiceProblem problem;
  private final LayerPool pool;
  private final double[][] middle;
  private final double[][] top;
  private final KnownLayer[][] bestUnder;
  private final KnownLayer[][] bestTop;
  private final double[][][] levels;
  private final double[][] values;
  private final int[] leastLevel;
  private final List<List<Integer>> above = new ArrayList<>();
  private final int tall;

  PricedStacks(ChoiceProblem problem, LayerPool pool) {
    this.problem = problem;
    this.pool = pool;
    int columns = problem.columns().size();
    this.middle = new double[columns][problem.classes()];
    this.top = new double[columns][problem.classes()];
    this.bestUnder = new KnownLayer[problem.spots()][problem.classes()];
    this.bestTop = new KnownLayer[problem.spots()][problem.classes()];
    this.levels = new double[columns][][];
    this.values = new double[columns][];
    this.leastLevel = new int[columns];
    long most = 0;
    for (int c = 0; c < columns; c++) {
      above.add(problem.above(c));
      most = problem.columns().get(c).below() < 0 ? Math.max(most, capacity(c)) : most;
    }
    tall = units(most);
    for (int c = 0; c < columns; c++) {
      levels[c] = new double[problem.columns().get(c).mostLevels() + 1][tall + 1];
      values[c] = new double[tall + 1];
    }
  }

  private long capacity(int column) {
    return problem.columns().get(column).capacity();
  }

  private static int units(long micrometres) {
    return (int) Math.floor(micrometres / UNIT);
  }

  /** Works everything out anew. */
  void at(double[] prices) {
    for (int spot = 0; spot < problem.spots(); spot++) {
      fill(pool.under(spot), bestUnder[spot], prices);
      fill(pool.onTop(spot), bestTop[spot], prices);
      dearer(bestTop[spot], bestUnder[spot], prices);
    }
    for (int c = problem.columns().size() - 1; c >= 0; c--) {
      levelValues(c, prices);
      stackUp(c);
    }
  }

  /** The dearest content of each height class or lower. */
  private static void fill(List<KnownLayer> layers, KnownLayer[] best, double[] prices) {
    double[] most = new double[best.length];
    Arrays.fill(most, -1);
    Arrays.fill(best, null);
    for (KnownLayer layer : layers) {
      double value = layer.priced(prices);
      if (value > most[layer.heightClass()]) {
        most[layer.heightClass()] = value;
        best[layer.heightClass()] = layer;
      }
    }
    for (int k = 1; k < best.length; k++) {
      if (most[k] <= most[k - 1]) {
        most[k] = most[k - 1];
        best[k] = best[k - 1];
      }
    }
  }

  private static void dearer(KnownLayer[] best, KnownLayer[] others, double[] prices) {
    for (int k = 0; k < best.length; k++) {
      if (others[k] != null
          && (best[k] == null || others[k].priced(prices) > best[k].priced(prices))) {
        best[k] = others[k];
      }
    }
  }

  private void levelValues(int c, double[] prices) {
    for (int k = 0; k < problem.classes(); k++) {
      double under = 0;
      double over = 0;
      for (int spot : problem.columns().get(c).spots()) {
        under += bestUnder[spot][k] == null ? 0 : bestUnder[spot][k].priced(prices);
        over += bestTop[spot][k] == null ? 0 : bestTop[spot][k].priced(prices);
      }
      middle[c][k] = under;
      top[c][k] = over;
    }
  }

  private void stackUp(int c) {
    StackColumn column = problem.columns().get(c);
    leastLevel[c] = leastLevel(c);
    double[][] table = levels[c];
    for (int l = 1; l < table.length; l++) {
      System.arraycopy(table[l - 1], 0, table[l], 0, tall + 1);
      for (int k = 0; k < problem.classes(); k++) {
        boolean useful = k == 0 ? middle[c][k] > 0 : middle[c][k] > middle[c][k - 1];
        int takes = units(column.middle()[k]);
        for (int h = takes; useful && h <= tall; h++) {
          table[l][h] = Math.max(table[l][h], table[l - 1][h - takes] + middle[c][k]);
        }
      }
    }
    for (int h = 0; h <= tall; h++) {
      values[c][h] = above.get(c).isEmpty() ? topped(c, h) : carrying(c, h);
    }
  }

  private double topped(int c, int h) {
    double best = levels[c][levels[c].length - 1][h];
    StackColumn column = problem.columns().get(c);
    for (int k = 0; k < problem.classes(); k++) {
      int takes = units(column.top()[k]);
      if (takes <= h) {
        best = Math.max(best, top[c][k] + levels[c][levels[c].length - 2][h - takes]);
      }
    }
    return best;
  }

  private double carrying(int c, int h) {
    double[] own = levels[c][levels[c].length - 1];
    double best = topped(c, h);
    for (int used = leastLevel[c]; used <= h; used++) {
      double value = own[used];
      for (int upper : above.get(c)) {
        value += values[upper][h - used];
      }
      best = Math.max(best, value);
    }
    return best;
  }

  /** What a column and those on it can hold at most in so much height. */
  double value(int column, long height) {
    return height < 0 ? Double.NEGATIVE_INFINITY : values[column][Math.min(tall, units(height))];
  }

  /** What all columns together can hold at most. */
  double total() {
    double total = 0;
    for (int c = 0; c < problem.columns().size(); c++) {
      total += problem.columns().get(c).below() < 0 ? value(c, capacity(c)) : 0;
    }
    return total;
  }

  /** How many of each kind one of the dearest stacks holds. */
  int[] used() {
    int[] used = new int[problem.worth().kinds()];
    for (int c = 0; c < problem.columns().size(); c++) {
      if (problem.columns().get(c).below() < 0) {
        trace(c, Math.min(tall, units(capacity(c))), used);
      }
    }
    return used;
  }

  private void trace(int c, int height, int[] used) {
    StackColumn column = problem.columns().get(c);
    int l = levels[c].length - 1;
    int h = height;
    if (!above.get(c).isEmpty()) {
      h = split(c, height);
    }
    if (h < height) {
      for (int upper : above.get(c)) {
        trace(upper, height - h, used);
      }
    } else {
      for (int k = 0; k < problem.classes(); k++) {
        int takes = units(column.top()[k]);
        if (takes <= h
            && values[c][h] > levels[c][l][h]
            && top[c][k] + levels[c][l - 1][h - takes] >= values[c][h]) {
          take(c, bestTop, k, used);
          h -= takes;
          l--;
          break;
        }
      }
    }
    traceLevels(c, l, h, used);
  }

  /** Whether a level of just this height may be worth building: some shelf's best is this tall. */
  boolean offers(int column, int heightClass, boolean onTop) {
    for (int spot : problem.columns().get(column).spots()) {
      KnownLayer layer = (onTop ? bestTop : bestUnder)[spot][heightClass];
      if (layer != null && layer.heightClass() == heightClass) {
        return true;
      }
    }
    return false;
  }

  /** The least height of one level of a column, with posts on it. */
  private int leastLevel(int column) {
    int least = tall + 1;
    for (int k = 0; k < problem.classes(); k++) {
      if (offers(column, k, false)) {
        least = Math.min(least, units(problem.columns().get(column).middle()[k]));
      }
    }
    return least;
  }

  /** How much of a height a column takes itself, the rest being for those on it. */
  private int split(int c, int height) {
    double[] own = levels[c][levels[c].length - 1];
    for (int used = leastLevel[c]; used < height; used++) {
      double value = own[used];
      for (int upper : above.get(c)) {
        value += values[upper][height - used];
      }
      if (value >= values[c][height]) {
        return used;
      }
    }
    return height;
  }

  private void traceLevels(int c, int most, int height, int[] used) {
    int h = height;
    for (int l = most; l > 0; l--) {
      for (int k = 0; k < problem.classes() && levels[c][l][h] > levels[c][l - 1][h]; k++) {
        int takes = units(problem.columns().get(c).middle()[k]);
        if (takes <= h && levels[c][l - 1][h - takes] + middle[c][k] >= levels[c][l][h]) {
          take(c, bestUnder, k, used);
          h -= takes;
          break;
        }
      }
    }
  }

  private void take(int c, KnownLayer[][] best, int heightClass, int[] used) {
    for (int spot : problem.columns().get(c).spots()) {
      KnownLayer layer = best[spot][heightClass];
      if (layer != null) {
        layer.addTo(used, 1);
      }
    }
  }
}
