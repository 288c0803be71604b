package shelfful.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The most that the pieces of one level can be worth, under some prices of pieces. */
final class LevelWorth {
  private static final int ROUNDS = 12;
  private static final int KEPT = 10;
  private static final double ROUNDING = 1e-6;

  /** A rounded limit broken by less is not worth another round, pieces. */
  private static final double BROKEN = 1e-3;

  private final List<Limit> limits;
  private final double[] counts;
  private final int[] inClass;
  private final List<Limit> active = new ArrayList<>();
  private double[] amounts;
  private double[] asked;
  private double answer;
  private double[] prices = new double[0];
  private final LimitCause[] stoppedBy;

  /** Sets up the level for the pieces of one class of heights. */
  LevelWorth(List<Limit> limits, double[] counts, int[] inClass) {
    this.limits = limits;
    this.counts = counts.clone();
    this.stoppedBy = new LimitCause[counts.length];
    for (Limit limit : limits) {
      for (int i : inClass) {
        if (limit.shares()[i] > 0) {
          double alone = Math.floor(limit.room() / limit.shares()[i] + ROUNDING);
          if (alone < this.counts[i]) {
            this.counts[i] = Math.max(0, alone);
            stoppedBy[i] = limit.cause();
          }
        }
      }
    }
    this.inClass = inClass;
    this.amounts = new double[counts.length];
  }

  /** An upper bound of the worth of a level when each piece of offer i is worth so much. */
  double most(double[] worth) {
    if (worth != asked) {
      answer = find(worth);
      asked = worth;
    }
    return answer;
  }

  private double find(double[] worth) {
    int[] wanted = Arrays.stream(inClass).filter(i -> worth[i] > 0).toArray();
    double[] value = new double[wanted.length];
    double[] bound = new double[wanted.length];
    for (int j = 0; j < wanted.length; j++) {
      value[j] = worth[wanted[j]];
      bound[j] = counts[wanted[j]];
    }
    double best = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      double[][] shares = new double[active.size()][wanted.length];
      double[] rooms = new double[active.size()];
      for (int r = 0; r < rooms.length; r++) {
        rooms[r] = active.get(r).room();
        for (int j = 0; j < wanted.length; j++) {
          shares[r][j] = active.get(r).shares()[wanted[j]];
        }
      }
      SmallProgram program = new SmallProgram(value, bound, shares, rooms);
      program.solve();
      prices = program.prices();
      best = Math.min(best, dual(value, bound, shares, rooms, prices));
      keep(wanted, program.amounts());
      if (!addViolated() && !addRounded()) {
        break;
      }
    }
    return best;
  }

  private static double dual(
      double[] value, double[] bound, double[][] shares, double[] rooms, double[] prices) {
    double total = 0;
    for (int r = 0; r < rooms.length; r++) {
      total += prices[r] * rooms[r];
    }
    for (int j = 0; j < value.length; j++) {
      double left = value[j];
      for (int r = 0; r < rooms.length; r++) {
        left -= prices[r] * shares[r][j];
      }
      total += bound[j] * Math.max(0, left);
    }
    return total;
  }

  private void keep(int[] wanted, double[] solution) {
    amounts = new double[counts.length];
    for (int j = 0; j < wanted.length; j++) {
      amounts[wanted[j]] = solution[j];
    }
  }

  private boolean addViolated() {
    Limit worst = null;
    double most = 1e-6;
    for (Limit limit : limits) {
      double over = (taken(limit) - limit.room()) / Math.max(1, limit.room());
      if (over > most) {
        most = over;
        worst = limit;
      }
    }
    return worst != null && !active.contains(worst) && activate(worst);
  }

  /** Adds the rounding of an active limit that the last amounts break most, if any. */
  private boolean addRounded() {
    Limit worst = null;
    double most = BROKEN;
    for (Limit limit : active) {
      for (int i : inClass) {
        boolean parted = Math.abs(amounts[i] - Math.rint(amounts[i])) > ROUNDING;
        for (int parts = 1; parted && limit.shares()[i] > 0 && parts <= 2; parts++) {
          Limit rounded = limit.rounded(limit.shares()[i] / parts);
          double over = over(rounded);
          if (over > most) {
            most = over;
            worst = rounded;
          }
        }
      }
    }
    return worst != null && activate(worst);
  }

  /** How far the last amounts lie beyond a limit, as a distance. */
  private double over(Limit limit) {
    double squares = 0;
    for (int i : inClass) {
      squares += limit.shares()[i] * limit.shares()[i];
    }
    return (taken(limit) - limit.room()) / Math.sqrt(squares);
  }

  /** What the last amounts take of a limit. */
  private double taken(Limit limit) {
    double taken = 0;
    for (int i : inClass) {
      taken += limit.shares()[i] * amounts[i];
    }
    return taken;
  }

  private boolean activate(Limit worst) {
    if (active.size() > KEPT) {
      active.remove(0);
    }
    active.add(worst);
    prices = new double[0];
    return true;
  }

  /** What the last bound put on the level, in fractions of pieces. */
  double[] amounts() {
    return amounts;
  }

  /** What stopped the last bound, or the height when everything low enough stands there. */
  LimitCause cause() {
    LimitCause cause = LimitCause.HEIGHT;
    double most = 0;
    for (int i : inClass) {
      if (stoppedBy[i] != null && amounts[i] >= counts[i] && amounts[i] > 0) {
        cause = stoppedBy[i];
      }
    }
    for (int r = 0; r < prices.length; r++) {
      double paid = prices[r] * active.get(r).room();
      if (paid > most) {
        most = paid;
        cause = active.get(r).cause();
      }
    }
    return cause;
  }
}
