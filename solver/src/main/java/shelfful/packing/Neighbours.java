package shelfful.packing;

import java.util.Arrays;

/**
 * The pairs of bodies near enough to touch: a list kept until some body has moved by half the
 * margin it was made with (Verlet 1967), so that most evaluations look at a few pairs per body.
 */
final class Neighbours {
  private static final double MARGIN_SHARE = 0.35;

  private final ShelfModel model;
  private final double margin;
  private final double[] madeAt;
  private double madeWith;
  private boolean made;

  int[] pairs = new int[64];

  /** End of the pairs of two round bodies, then end of all, as indices into {@link #pairs}. */
  int roundEnd;

  int end;

  Neighbours(ShelfModel model) {
    this.model = model;
    this.madeAt = new double[2 * model.bodies];
    double sum = 0;
    for (int i = 0; i < model.bodies; i++) {
      sum += model.reach[model.kindOf[i]];
    }
    this.margin = model.bodies == 0 ? 0 : MARGIN_SHARE * sum / model.bodies;
  }

  /** Makes the list anew if it may no longer be complete. */
  void follow(double[] at, double extra) {
    if (made && extra == madeWith) {
      double limit = margin * margin / 4;
      boolean near = true;
      for (int i = 0; i < madeAt.length && near; i += 2) {
        double dx = at[i] - madeAt[i];
        double dy = at[i + 1] - madeAt[i + 1];
        near = dx * dx + dy * dy < limit;
      }
      if (near) {
        return;
      }
    }
    make(at, extra);
  }

  private void make(double[] at, double extra) {
    System.arraycopy(at, 0, madeAt, 0, madeAt.length);
    madeWith = extra;
    made = true;
    end = 0;
    collect(at, extra, 0, model.roundBodies, true);
    roundEnd = end;
    collect(at, extra, model.roundBodies, model.bodies, false);
  }

  private void collect(double[] at, double extra, int from, int to, boolean round) {
    for (int i = from; i < to; i++) {
      int row = model.kindOf[i] * model.kinds;
      for (int j = 0; j < i; j++) {
        int pair = row + model.kindOf[j];
        double reach = touching(pair, i, j, round);
        double limit = reach + extra + margin;
        double dx = at[2 * i] - at[2 * j];
        double dy = at[2 * i + 1] - at[2 * j + 1];
        if (reach >= 0 && dx * dx + dy * dy < limit * limit) {
          add(i, j);
        }
      }
    }
  }

  private double touching(int pair, int i, int j, boolean round) {
    if (round) {
      return model.axisDistance[pair];
    }
    return model.partPairs[pair].length == 0
        ? -1
        : model.reach[model.kindOf[i]] + model.reach[model.kindOf[j]] + model.required[pair];
  }

  private void add(int i, int j) {
    if (end + 2 > pairs.length) {
      pairs = Arrays.copyOf(pairs, 2 * pairs.length);
    }
    pairs[end++] = i;
    pairs[end++] = j;
  }
}
