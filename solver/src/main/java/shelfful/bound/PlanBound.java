package shelfful.bound;

import java.util.List;

/**
 * The bound of one column plan and one measure of worth: the Lagrangian dual of "no piece, post or
 * shelf more often than there are", improved by steps. Every step's value is a bound; the least is
 * kept.
 */
final class PlanBound {
  private static final int PATIENCE = 8;
  private static final double SHORTER = 0.7;
  private static final double FIRST_LENGTH = 0.05;

  private final BoundTask task;
  private final List<Cluster> clusters;
  private final double[] worth;
  private final double[] limit;
  private final double[] stock;
  private final double[] price;
  private final double[] drift;
  private double best;
  private double length = FIRST_LENGTH;
  private int idle;

  PlanBound(BoundTask task, List<Cluster> clusters, double[] worth) {
    this.task = task;
    this.clusters = clusters;
    this.worth = worth;
    this.stock = joined(task.counts(), task.posts(), task.shelves());
    this.price = new double[stock.length];
    this.drift = new double[stock.length];
    this.limit = new double[stock.length];
    for (int i = 0; i < stock.length; i++) {
      limit[i] = i < worth.length ? worth[i] : Double.POSITIVE_INFINITY;
      best += i < worth.length ? worth[i] * stock[i] : 0;
    }
  }

  private static double[] joined(double[]... parts) {
    return java.util.Arrays.stream(parts).flatMapToDouble(java.util.Arrays::stream).toArray();
  }

  double best() {
    return best;
  }

  /** One step of the dual. */
  void refine() {
    int pieces = worth.length;
    int posts = task.posts().length;
    double[] left = new double[pieces];
    double value = 0;
    for (int i = 0; i < stock.length; i++) {
      value += price[i] * stock[i];
    }
    for (int i = 0; i < pieces; i++) {
      left[i] = worth[i] - price[i];
    }
    Prices prices =
        new Prices(
            left,
            java.util.Arrays.copyOfRange(price, pieces, pieces + posts),
            java.util.Arrays.copyOfRange(price, pieces + posts, price.length));
    Usage usage = new Usage(task.postChoice(), prices, task.counts(), task.posts(), task.shelves());
    clusters.forEach(cluster -> cluster.best(prices, usage));
    move(value + usage.value(), joined(usage.pieces(), usage.posts(), usage.shelves()));
  }

  private void move(double value, double[] slack) {
    if (value < best - 1e-6 * Math.abs(best)) {
      best = value;
      idle = 0;
    } else if (++idle >= PATIENCE) {
      idle = 0;
      length *= SHORTER;
    }
    double norm = 0;
    for (int i = 0; i < slack.length; i++) {
      drift[i] = (drift[i] + slack[i]) / 2;
      norm += price[i] > 0 || drift[i] < 0 ? drift[i] * drift[i] : 0;
    }
    if (norm == 0) {
      return;
    }
    double by = length * Math.max(value, 1e-9) / norm;
    for (int i = 0; i < slack.length; i++) {
      price[i] = Math.max(0, Math.min(limit[i], price[i] - by * drift[i]));
    }
  }
}
