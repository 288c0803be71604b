package shelfful.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A random choice so small that everything can be tried: up to two columns and three kinds. */
final class SmallChoice {
  private static final long[] HEIGHTS = {60_000, 110_000, 170_000};
  private static final long SHELF = 15_000;
  private static final long POST_MORE = 20_000;

  final ChoiceProblem problem;
  final LayerPool pool;
  private double best;

  SmallChoice(long seed, int contents) {
    SplittableRandom random = new SplittableRandom(seed);
    List<double[]> pieces = new ArrayList<>();
    for (int kind = 0; kind < HEIGHTS.length; kind++) {
      double worth = 1 + random.nextInt(3);
      pieces.add(
          random.ints(1 + random.nextInt(9), 0, 2).mapToDouble(more -> worth + more).toArray());
    }
    boolean stacked = random.nextBoolean();
    int columns = 1 + random.nextInt(2);
    List<StackColumn> all = new ArrayList<>();
    for (int c = 0; c < columns; c++) {
      long capacity = 200_000 + random.nextInt(250_000);
      int below = c > 0 && stacked ? 0 : -1;
      all.add(new StackColumn(new int[] {c}, below, capacity, middle(), top(), 4));
    }
    problem = new ChoiceProblem(all, new KindWorth(pieces), HEIGHTS.length, columns);
    pool = new LayerPool(columns);
    for (int c = 0; c < columns; c++) {
      for (int i = 0; i < contents; i++) {
        pool.add(c, random.nextInt(4) == 0, layer(random));
      }
    }
  }

  private static long[] middle() {
    long[] takes = new long[HEIGHTS.length];
    for (int k = 0; k < takes.length; k++) {
      takes[k] = HEIGHTS[k] + SHELF + POST_MORE;
    }
    return takes;
  }

  private static long[] top() {
    long[] takes = new long[HEIGHTS.length];
    for (int k = 0; k < takes.length; k++) {
      takes[k] = HEIGHTS[k] + SHELF;
    }
    return takes;
  }

  private static KnownLayer layer(SplittableRandom random) {
    int[] counts = new int[HEIGHTS.length];
    int highest = random.nextInt(HEIGHTS.length);
    counts[highest] = 1 + random.nextInt(4);
    for (int kind = 0; kind < highest; kind++) {
      counts[kind] = random.nextInt(4);
    }
    return new KnownLayer(counts, highest);
  }

  /** The worth of the best stacks, by trying all. */
  double bestOfAll() {
    best = 0;
    column(0, new int[HEIGHTS.length], new long[2], new boolean[2]);
    return best;
  }

  private void column(int c, int[] used, long[] taken, boolean[] built) {
    best = Math.max(best, problem.worth().of(used));
    if (c == problem.columns().size()) {
      return;
    }
    StackColumn column = problem.columns().get(c);
    boolean standsOnOther = column.below() >= 0;
    long room = standsOnOther ? problem.columns().get(0).capacity() - taken[0] : column.capacity();
    if (!standsOnOther || built[0]) {
      levels(c, used, taken, built, room, 4);
    }
    column(c + 1, used, taken, built);
  }

  private void levels(int c, int[] used, long[] taken, boolean[] built, long room, int levels) {
    StackColumn column = problem.columns().get(c);
    if (levels == 0) {
      return;
    }
    List<KnownLayer> forTop = new ArrayList<>(pool.onTop(c));
    forTop.addAll(pool.under(c));
    for (KnownLayer layer : forTop) {
      if (column.top()[layer.heightClass()] <= room) {
        boolean[] closed = built.clone();
        closed[c] = false;
        column(c + 1, plus(used, layer), taken, closed);
      }
    }
    for (KnownLayer layer : pool.under(c)) {
      long takes = column.middle()[layer.heightClass()];
      if (takes <= room) {
        long[] nowTaken = taken.clone();
        nowTaken[c] += takes;
        boolean[] nowBuilt = built.clone();
        nowBuilt[c] = true;
        int[] nowUsed = plus(used, layer);
        column(c + 1, nowUsed, nowTaken, nowBuilt);
        levels(c, nowUsed, nowTaken, nowBuilt, room - takes, levels - 1);
      }
    }
  }

  private static int[] plus(int[] used, KnownLayer layer) {
    int[] sum = used.clone();
    for (int kind = 0; kind < sum.length; kind++) {
      sum[kind] += layer.counts()[kind];
    }
    return sum;
  }
}
