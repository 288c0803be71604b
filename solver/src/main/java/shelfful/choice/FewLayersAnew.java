package shelfful.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Chooses the contents of a few shelves anew from those known, all others staying as they are: for
 * two shelves the best of every pair, for more the best that begins with one of the dearest. Pieces
 * that are used elsewhere count for nothing.
 */
public final class FewLayersAnew {
  private static final int DEAREST = 25;

  private final KindWorth worth;
  private final LayerPool pool;
  private final int[] stays;
  private final int[] used;
  private final long[] roomLeft;
  private final List<OpenLevel> levels;
  private final KnownLayer[] now;
  private final KnownLayer[] best;
  private final List<List<KnownLayer>> candidates = new ArrayList<>();
  private double bestWorth;
  private boolean found;

  /**
   * Ready to choose.
   *
   * @param used how many of each kind stand on the shelves that stay
   * @param roomLeft for each way up the height that the open levels may take together
   */
  public FewLayersAnew(
      KindWorth worth, LayerPool pool, List<OpenLevel> levels, int[] used, long[] roomLeft) {
    this.worth = worth;
    this.pool = pool;
    this.levels = List.copyOf(levels);
    this.stays = used.clone();
    this.used = used.clone();
    this.roomLeft = roomLeft.clone();
    this.now = new KnownLayer[levels.size()];
    this.best = new KnownLayer[levels.size()];
  }

  /**
   * The contents by open level, or null when none are worth more than asked.
   *
   * @param atLeast the worth of the whole load that is to be exceeded
   * @param not contents that are not wanted all together again
   */
  public List<KnownLayer> better(double atLeast, List<int[]> not) {
    double had = worth.of(used);
    for (OpenLevel level : levels) {
      candidates.add(candidates(level, had));
    }
    bestWorth = atLeast;
    choose(0, not);
    return found ? List.of(best) : null;
  }

  private List<KnownLayer> candidates(OpenLevel level, double had) {
    List<KnownLayer> fitting = new ArrayList<>();
    List<double[]> order = new ArrayList<>();
    collect(pool.under(level.spot()), level, had, fitting, order);
    if (level.onTop()) {
      collect(pool.onTop(level.spot()), level, had, fitting, order);
    }
    order.sort(Comparator.comparingDouble(entry -> -entry[1]));
    return order.stream().map(entry -> fitting.get((int) entry[0])).toList();
  }

  private void collect(
      List<KnownLayer> known,
      OpenLevel level,
      double had,
      List<KnownLayer> fitting,
      List<double[]> order) {
    for (KnownLayer layer : known) {
      if (fits(level, layer)) {
        order.add(new double[] {fitting.size(), with(layer) - had});
        fitting.add(layer);
      }
    }
  }

  private boolean fits(OpenLevel level, KnownLayer layer) {
    long takes = level.takes(layer);
    for (int path : level.paths()) {
      if (takes > roomLeft[path]) {
        return false;
      }
    }
    return true;
  }

  private double with(KnownLayer layer) {
    double sum = 0;
    for (int kind = 0; kind < used.length; kind++) {
      sum += worth.of(kind, used[kind] + layer.counts()[kind]);
    }
    return sum;
  }

  private void choose(int at, List<int[]> not) {
    OpenLevel level = levels.get(at);
    boolean last = at == levels.size() - 1;
    double had = worth.of(used);
    double later = 0;
    for (int l = at + 1; l < levels.size(); l++) {
      later += mostOf(l);
    }
    int tried = 0;
    for (KnownLayer layer : candidates.get(at)) {
      double sum = with(layer);
      // Candidates are in the order of what they were worth at first; later they are worth less.
      if (had + firstWorth(at, layer) + later <= bestWorth
          || !last && levels.size() > 2 && tried == DEAREST) {
        break;
      }
      if (sum + later <= bestWorth || !fits(level, layer)) {
        continue;
      }
      tried++;
      now[at] = layer;
      if (last) {
        if (!isAllOf(not)) {
          found = true;
          bestWorth = sum;
          System.arraycopy(now, 0, best, 0, now.length);
        }
      } else {
        take(level, layer, 1);
        choose(at + 1, not);
        take(level, layer, -1);
      }
    }
  }

  private double mostOf(int level) {
    return candidates.get(level).isEmpty() ? 0 : firstWorth(level, candidates.get(level).get(0));
  }

  /** What a content was worth before any other was chosen: an upper bound ever after. */
  private double firstWorth(int level, KnownLayer layer) {
    double sum = 0;
    for (int kind = 0; kind < used.length; kind++) {
      int before = stays[kind];
      sum += worth.of(kind, before + layer.counts()[kind]) - worth.of(kind, before);
    }
    return sum;
  }

  private boolean isAllOf(List<int[]> contents) {
    for (int level = 0; level < now.length; level++) {
      if (!Arrays.equals(now[level].counts(), contents.get(level))) {
        return false;
      }
    }
    return true;
  }

  private void take(OpenLevel level, KnownLayer layer, int times) {
    for (int kind = 0; kind < used.length; kind++) {
      used[kind] += times * layer.counts()[kind];
    }
    for (int path : level.paths()) {
      roomLeft[path] -= times * level.takes(layer);
    }
  }
}
