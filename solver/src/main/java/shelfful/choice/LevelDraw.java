package shelfful.choice;

import java.util.List;
import java.util.Random;

/**
 * Puts one level more on a column of a load: of contents drawn from a pool, for each shelf the one
 * that adds most for the height it takes.
 */
final class LevelDraw {
  /**
   * So many contents are looked at for each shelf. On the pools of ten sample loads all contents at
   * each step led to 1 % less worth in as much time, 8 or 100 to 0.1 % less.
   */
  private static final int DRAWN = 20;

  private final ChoiceProblem problem;
  private final LayerPool pool;
  private final WalkedLoad load;
  private final KnownLayer nothing;

  /** By column, what a micrometre of height is worth. */
  private final double[] ofHeight;

  LevelDraw(ChoiceProblem problem, LayerPool pool, WalkedLoad load) {
    this.problem = problem;
    this.pool = pool;
    this.load = load;
    this.nothing = new KnownLayer(new int[problem.worth().kinds()], 0);
    this.ofHeight = new double[problem.columns().size()];
  }

  /** Values height by the load as it stands now; before, it is worth nothing. */
  void valueHeight() {
    double all = 0;
    long taken = 0;
    for (int c = 0; c < ofHeight.length; c++) {
      ofHeight[c] = alone(load.column(c));
      all += ofHeight[c];
      taken += load.taken(c);
    }
    // Kinds that stand in several columns are worth less together than alone.
    double scale = all > 0 ? load.worth() / all : 0;
    for (int c = 0; c < ofHeight.length; c++) {
      ofHeight[c] =
          load.taken(c) > 0
              ? scale * ofHeight[c] / load.taken(c)
              : load.worth() / Math.max(1, taken);
    }
  }

  private double alone(List<ChosenLevel> levels) {
    double worth = 0;
    for (ChosenLevel level : levels) {
      for (KnownLayer content : level.contents()) {
        worth += problem.worth().alone(content);
      }
    }
    return worth;
  }

  /**
   * False when none of those drawn goes in or adds anything.
   *
   * @param noise added to the worth of each, so that not always the same come first
   */
  boolean putOn(int column, double noise, Random random) {
    if (!load.mayGrow(column)) {
      return false;
    }
    Drawn best = draw(column, false, noise, random);
    if (load.mayBeClosed(column)) {
      Drawn closing = draw(column, true, noise, random);
      best = best == null || closing != null && closing.value > best.value ? closing : best;
    }
    if (best == null) {
      return false;
    }
    load.putOn(column, best.level);
    return true;
  }

  /** A level and what it adds, less what its height is worth. */
  private record Drawn(ChosenLevel level, double value) {}

  private Drawn draw(int column, boolean onTop, double noise, Random random) {
    int[] spots = problem.columns().get(column).spots();
    KnownLayer[] chosen = new KnownLayer[spots.length];
    int first = spots.length == 1 ? 0 : random.nextInt(spots.length);
    Search search = new Search(column, onTop, noise, random);
    for (int i = 0; i < spots.length; i++) {
      int place = (first + i) % spots.length;
      KnownLayer content = search.dearest(spots[place]);
      chosen[place] = content == null ? nothing : content;
      load.use(chosen[place], 1);
    }
    for (KnownLayer content : chosen) {
      load.use(content, -1);
    }
    return search.found
        ? new Drawn(new ChosenLevel(search.highest, onTop, List.of(chosen)), search.value)
        : null;
  }

  /** For the contents of one level, shelf by shelf. */
  private final class Search {
    private final int column;
    private final boolean onTop;
    private final double noise;
    private final Random random;
    private final long room;
    private int highest;
    private long takes;
    private double value;
    private boolean found;

    Search(int column, boolean onTop, double noise, Random random) {
      this.column = column;
      this.onTop = onTop;
      this.noise = noise;
      this.random = random;
      this.room = load.room(column);
    }

    /** Null when nothing goes in or adds anything. */
    KnownLayer dearest(int spot) {
      List<KnownLayer> under = pool.under(spot);
      List<KnownLayer> top = onTop ? pool.onTop(spot) : List.of();
      int all = under.size() + top.size();
      KnownLayer dearest = null;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < Math.min(DRAWN, all); i++) {
        int at = all <= DRAWN ? i : random.nextInt(all);
        KnownLayer content = at < under.size() ? under.get(at) : top.get(at - under.size());
        double adds = value(content);
        if (adds > most) {
          most = adds;
          dearest = content;
        }
      }
      if (dearest != null) {
        highest = Math.max(highest, dearest.heightClass());
        takes = load.takes(column, highest, onTop);
        value += most;
        found = true;
      }
      return dearest;
    }

    private double value(KnownLayer content) {
      long height = load.takes(column, Math.max(highest, content.heightClass()), onTop);
      double adds = height > room ? 0 : load.adds(content);
      return adds > 0
          ? adds - ofHeight[column] * (height - takes) + noise * gumbel()
          : Double.NEGATIVE_INFINITY;
    }

    /** With it each is drawn in the proportion of e to its worth (E. J. Gumbel, 1954). */
    private double gumbel() {
      return -Math.log(-Math.log(1 - random.nextDouble()) + Double.MIN_NORMAL);
    }
  }
}
