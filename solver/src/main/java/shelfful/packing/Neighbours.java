package shelfful.packing;

import java.util.Arrays;
import shelfful.geometry.Contour;

/**
 * The pairs of bodies, and of parts of bodies, near enough to touch: lists kept until some body has
 * moved or turned by half the margin they were made with (Verlet 1967), so that most evaluations
 * look at a few pairs per body.
 */
final class Neighbours {
  /** Numbers for each pair in {@link #parts}. */
  static final int PER_PAIR = 4;

  private static final double MARGIN_SHARE = 0.35;

  private final ShelfModel model;
  private final Setting setting;
  private final double margin;
  private final double[] madeAt;
  private double madeWith;
  private boolean made;

  /** Pairs of round bodies, one after the other. */
  final NearList round = new NearList();

  /** Pairs of parts: two bodies and their contours in the setting, one pair after the other. */
  final NearList parts = new NearList();

  /** By pair of parts, how far their centres may be apart and touch, but for the gap. */
  double[] reaches = new double[32];

  /** By pair of parts, the gap that is required. */
  double[] gaps = new double[32];

  Neighbours(Setting setting) {
    this.setting = setting;
    this.model = setting.model;
    this.madeAt = new double[setting.unknowns];
    double sum = 0;
    for (int i = 0; i < model.bodies; i++) {
      sum += model.reach[model.kindOf[i]];
    }
    this.margin = model.bodies == 0 ? 0 : MARGIN_SHARE * sum / model.bodies;
  }

  /** How far a body may move until the lists are made anew, mm. */
  double leeway() {
    return margin / 2;
  }

  /** Makes the lists anew if they may no longer be complete; says whether it did. */
  boolean follow(double[] at, double extra) {
    boolean complete = made && extra == madeWith;
    for (int i = 0; i < model.bodies && complete; i++) {
      complete = isNear(i, at);
    }
    if (!complete) {
      make(at, extra);
    }
    return !complete;
  }

  /** Turning moves no part further than the body's reach times the angle, its unknown. */
  private boolean isNear(int body, double[] at) {
    int turn = setting.turn[body];
    double limit = leeway() - (turn < 0 ? 0 : Math.abs(at[turn] - madeAt[turn]));
    double dx = at[2 * body] - madeAt[2 * body];
    double dy = at[2 * body + 1] - madeAt[2 * body + 1];
    return limit > 0 && dx * dx + dy * dy < limit * limit;
  }

  private void make(double[] at, double extra) {
    System.arraycopy(at, 0, madeAt, 0, madeAt.length);
    madeWith = extra;
    made = true;
    round.clear();
    parts.clear();
    for (int i = 0; i < model.roundBodies; i++) {
      collectRound(at, extra, i);
    }
    for (int i = model.roundBodies; i < model.bodies; i++) {
      collectParts(at, extra, i);
    }
  }

  private void collectRound(double[] at, double extra, int i) {
    int row = model.kindOf[i] * model.kinds;
    for (int j = 0; j < i; j++) {
      double reach = model.axisDistance[row + model.kindOf[j]];
      double limit = reach + extra + margin;
      if (reach >= 0 && square(at, i, j) < limit * limit) {
        round.add(i);
        round.add(j);
      }
    }
  }

  private void collectParts(double[] at, double extra, int i) {
    int row = model.kindOf[i] * model.kinds;
    for (int j = 0; j < i; j++) {
      int pair = row + model.kindOf[j];
      double reach =
          model.reach[model.kindOf[i]] + model.reach[model.kindOf[j]] + model.required[pair];
      double limit = reach + extra + margin;
      if (square(at, i, j) < limit * limit) {
        addParts(i, j, pair, extra);
      }
    }
  }

  private static double square(double[] at, int i, int j) {
    double dx = at[2 * i] - at[2 * j];
    double dy = at[2 * i + 1] - at[2 * j + 1];
    return dx * dx + dy * dy;
  }

  private void addParts(int i, int j, int pair, double extra) {
    int[] exposed = model.partPairs[pair];
    double gap = model.required[pair];
    for (int p = 0; p < exposed.length; p += 2) {
      int first = setting.firstContour[i] + exposed[p];
      int second = setting.firstContour[j] + exposed[p + 1];
      Contour a = setting.contours[first];
      Contour b = setting.contours[second];
      if (!a.isFarFrom(b, gap + extra + margin)) {
        int number = parts.end / PER_PAIR;
        if (number == gaps.length) {
          reaches = Arrays.copyOf(reaches, 2 * number);
          gaps = Arrays.copyOf(gaps, 2 * number);
        }
        reaches[number] = a.outerRadius() + b.outerRadius();
        gaps[number] = gap;
        parts.add(i);
        parts.add(j);
        parts.add(first);
        parts.add(second);
      }
    }
  }
}
