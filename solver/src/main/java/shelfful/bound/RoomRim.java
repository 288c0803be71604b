package shelfful.bound;

import java.util.Arrays;

/** The rim of a polygon. */
final class RoomRim implements RimTurning {
  private static final double FULL_TURN = 2 * Math.PI;
  private static final double NO_LENGTH = 1e-9;

  private final double[] x;
  private final double[] y;
  private final double[] turn;
  private final double[] swept;
  private final double[] along;

  RoomRim(ConvexPolygon room) {
    double[] all = room.coordinates();
    int corners = 0;
    double[] xs = new double[all.length / 2];
    double[] ys = new double[all.length / 2];
    for (int i = 0; i < all.length / 2; i++) {
      boolean same =
          corners > 0
              && Math.hypot(all[2 * i] - xs[corners - 1], all[2 * i + 1] - ys[corners - 1])
                  < NO_LENGTH;
      if (!same) {
        xs[corners] = all[2 * i];
        ys[corners] = all[2 * i + 1];
        corners++;
      }
    }
    this.x = Arrays.copyOf(xs, corners);
    this.y = Arrays.copyOf(ys, corners);
    this.turn = new double[corners];
    for (int i = 0; i < corners; i++) {
      turn[i] = turnAt(i);
    }
    this.swept = new double[2 * corners + 1];
    this.along = new double[2 * corners + 1];
    for (int i = 0; i < 2 * corners; i++) {
      int a = i % corners;
      int b = (i + 1) % corners;
      swept[i + 1] = swept[i] + x[a] * y[b] - x[b] * y[a];
      along[i + 1] = along[i] + Math.hypot(x[b] - x[a], y[b] - y[a]);
    }
  }

  private double turnAt(int i) {
    int n = x.length;
    int before = (i + n - 1) % n;
    int after = (i + 1) % n;
    double ax = x[i] - x[before];
    double ay = y[i] - y[before];
    double bx = x[after] - x[i];
    double by = y[after] - y[i];
    return Math.max(0, Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
  }

  @Override
  public double mostTurning(double target, double saving) {
    int n = x.length;
    double most = 0;
    double turned = 0;
    int reach = -1;
    for (int from = 0; from < n; from++) {
      if (reach < from) {
        reach = from;
        turned = turn[from % n];
      }
      while (!(isEnough(from, reach, target, saving))) {
        reach++;
        if (reach - from >= n) {
          return FULL_TURN;
        }
        turned += turn[reach % n];
      }
      most = Math.max(most, turned);
      turned -= turn[from];
    }
    return Math.min(most, FULL_TURN);
  }

  private boolean isEnough(int from, int reach, double target, double saving) {
    int n = x.length;
    if (reach - from < 2) {
      return false;
    }
    int to = reach % n;
    double twice = swept[reach] - swept[from] + x[to] * y[from] - x[from] * y[to];
    double length = along[reach + 1] - along[from] + side((from + n - 1) % n);
    return twice / 2 - saving * length >= target;
  }

  private double side(int from) {
    int to = (from + 1) % x.length;
    return Math.hypot(x[to] - x[from], y[to] - y[from]);
  }
}
