package shelfful.bound;

import java.util.Arrays;
import java.util.List;

/**
 * The bound of one column plan and one measure of worth: the Lagrangian dual of "no piece, post or
 * shelf more often than there are", improved by steps. Every step's value is a bound; the least is
 * kept.
 */
final class PlanBound {
  private static final int PATIENCE = 6;
  private static final double SHORTER = 0.6;
  private static final double STEADY = 0.7;
  private static final double SOME = 0.02;
  private static final double FIRST_LENGTH = 0.05;

  /** Share of the bound from which posts or shelves are named as what it is owed to. */
  private static final double SCARCE = 0.1;

  private final BoundTask task;
  private final List<Cluster> clusters;
  private final double[] worth;
  private final double[] limit;
  private final double[] stock;
  private final double[] price;
  private final double[] bestPrice;
  private final double[] scale;
  private final double[] drift;
  private double best;
  private double length = FIRST_LENGTH;
  private int idle;
  private boolean improved;
  private LimitCause cause = LimitCause.HEIGHT;

  PlanBound(BoundTask task, List<Cluster> clusters, double[] worth) {
    this.task = task;
    this.clusters = clusters;
    this.worth = worth.clone();
    for (int i = 0; i < worth.length; i++) {
      int offer = i;
      boolean held = clusters.stream().anyMatch(cluster -> cluster.canHold(offer));
      this.worth[i] = held ? worth[i] : 0;
    }
    this.stock = joined(task.counts(), task.posts(), task.shelves());
    this.price = new double[stock.length];
    this.drift = new double[stock.length];
    this.bestPrice = new double[stock.length];
    this.scale = new double[stock.length];
    this.limit = new double[stock.length];
    for (int i = 0; i < stock.length; i++) {
      limit[i] = i < worth.length ? this.worth[i] : Double.POSITIVE_INFINITY;
      best += i < worth.length ? this.worth[i] * stock[i] : 0;
    }
    int posts = worth.length + task.posts().length;
    for (int i = 0; i < stock.length; i++) {
      double posted = Arrays.stream(task.posts()).sum();
      double shelved = Arrays.stream(task.shelves()).sum();
      double each = best / Math.max(1, i < posts ? posted : shelved);
      scale[i] = i < worth.length ? this.worth[i] : each;
    }
  }

  private static double[] joined(double[]... parts) {
    return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
  }

  double best() {
    return best;
  }

  /** One step of the dual. */
  void refine() {
    double value = 0;
    for (int i = 0; i < stock.length; i++) {
      value += price[i] * stock[i];
    }
    Prices prices = prices();
    Usage usage = new Usage(task.postChoice(), prices, task.counts(), task.posts(), task.shelves());
    clusters.forEach(cluster -> cluster.best(prices, usage));
    note(value + usage.value(), usage);
    if (value + usage.value() < best) {
      System.arraycopy(price, 0, bestPrice, 0, price.length);
    }
    move(value + usage.value(), joined(usage.pieces(), usage.posts(), usage.shelves()));
  }

  /** Notes what the least bound so far is owed to. */
  private void note(double value, Usage usage) {
    if (value < best) {
      int posts = task.posts().length;
      double postsPaid = paid(worth.length, worth.length + posts);
      double shelvesPaid = paid(worth.length + posts, stock.length);
      cause = usage.cause();
      if (Math.max(postsPaid, shelvesPaid) > SCARCE * value) {
        cause = postsPaid > shelvesPaid ? LimitCause.POSTS : LimitCause.SHELVES;
      } else if (usage.isOutOfShelves()) {
        cause = LimitCause.SHELVES;
      }
    }
  }

  private double paid(int from, int to) {
    double paid = 0;
    for (int i = from; i < to; i++) {
      paid += price[i] * stock[i];
    }
    return paid;
  }

  /** What the bound is owed to. */
  LimitCause cause() {
    return cause;
  }

  Prices prices() {
    int pieces = worth.length;
    int posts = task.posts().length;
    double[] left = new double[pieces];
    for (int i = 0; i < pieces; i++) {
      left[i] = worth[i] - price[i];
    }
    return new Prices(
        left,
        Arrays.copyOfRange(price, pieces, pieces + posts),
        Arrays.copyOfRange(price, pieces + posts, price.length));
  }

  /** A step against what is left over, shorter and from the best place again after each stall. */
  private void move(double value, double[] slack) {
    if (value < best - SOME * length * Math.abs(best)) {
      idle = 0;
    } else if (++idle >= PATIENCE) {
      idle = 0;
      length *= SHORTER;
      if (value >= best && improved) {
        System.arraycopy(bestPrice, 0, price, 0, price.length);
        Arrays.fill(drift, 0);
        return;
      }
    }
    remember(value);
    double norm = 0;
    for (int i = 0; i < slack.length; i++) {
      drift[i] = STEADY * drift[i] + (1 - STEADY) * slack[i];
      double scaled = drift[i] * scale[i];
      norm +=
          price[i] > 0 && price[i] < limit[i] || slack[i] < 0 != price[i] > 0 ? scaled * scaled : 0;
    }
    if (norm > 0) {
      double by = length * Math.max(value, 0) / norm;
      for (int i = 0; i < slack.length; i++) {
        double moved = price[i] - by * drift[i] * scale[i] * scale[i];
        price[i] = Math.max(0, Math.min(limit[i], moved));
      }
    }
  }

  private void remember(double value) {
    if (value < best) {
      best = value;
      improved = true;
    }
  }
}
