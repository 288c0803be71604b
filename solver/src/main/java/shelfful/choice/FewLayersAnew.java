package shelfful.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Chooses the contents of a few shelves anew from those known, all others staying as they are: for
 * two shelves the best of every pair, for more the best that begins with one of the dearest. Pieces
 * that are used elsewhere count for nothing.
 */
public final class FewLayersAnew {
  private static final int DEAREST = 25;

  /** So many choices that cannot stand are enough. */
  private static final int MOST_REFUSED = 30;

  private final KindWorth worth;
  private final LayerPool pool;
  private final int[] used;
  private final long[] roomLeft;
  private final List<OpenLevel> levels;
  private final Candidate[] now;
  private final Candidate[] best;
  private final Candidate[][] candidates;

  /** For each kind what one piece more, two more ... are worth while so many are used. */
  private final double[][] more;

  private double bestWorth;
  private boolean found;
  private Predicate<List<KnownLayer>> canStand;
  private int refused;

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
    this.used = used.clone();
    this.roomLeft = roomLeft.clone();
    this.now = new Candidate[levels.size()];
    this.best = new Candidate[levels.size()];
    this.candidates = new Candidate[levels.size()][];
    this.more = new double[used.length][];
    for (int kind = 0; kind < used.length; kind++) {
      more[kind] = new double[worth.most(kind) + 1];
      reckon(kind);
    }
  }

  /**
   * A content for an open level.
   *
   * @param first what it adds before any other is chosen: never less than what it adds later
   */
  private record Candidate(KnownLayer layer, long takes, double first) {}

  /**
   * The contents by open level, or null when none are worth more than asked.
   *
   * @param atLeast the worth of the whole load that is to be exceeded
   * @param not contents that are not wanted all together again
   */
  public List<KnownLayer> better(double atLeast, List<int[]> not) {
    return better(atLeast, not, contents -> true);
  }

  /**
   * The same, of those contents that can stand with the posts and shelves there are; null also when
   * many were refused.
   *
   * @param canStand asked only of contents that are better than the best so far
   */
  public List<KnownLayer> better(
      double atLeast, List<int[]> not, Predicate<List<KnownLayer>> canStand) {
    this.canStand = canStand;
    this.refused = 0;
    for (int level = 0; level < candidates.length; level++) {
      candidates[level] = candidates(levels.get(level));
    }
    bestWorth = atLeast;
    choose(0, worth.of(used), not);
    return found ? layers(best) : null;
  }

  private Candidate[] candidates(OpenLevel level) {
    List<Candidate> fitting = new ArrayList<>();
    collect(pool.under(level.spot()), level, fitting);
    if (level.onTop()) {
      collect(pool.onTop(level.spot()), level, fitting);
    }
    fitting.sort(Comparator.comparingDouble(candidate -> -candidate.first()));
    return fitting.toArray(new Candidate[0]);
  }

  private void collect(List<KnownLayer> known, OpenLevel level, List<Candidate> fitting) {
    for (KnownLayer layer : known) {
      long takes = level.takes(layer);
      if (fits(level, takes)) {
        fitting.add(new Candidate(layer, takes, adds(layer)));
      }
    }
  }

  private boolean fits(OpenLevel level, long takes) {
    for (int path : level.paths()) {
      if (takes > roomLeft[path]) {
        return false;
      }
    }
    return true;
  }

  /** What a content adds to what is used now. */
  private double adds(KnownLayer layer) {
    int[] kinds = layer.kinds();
    int[] each = layer.each();
    double sum = 0;
    for (int i = 0; i < kinds.length; i++) {
      double[] gains = more[kinds[i]];
      sum += gains[Math.min(each[i], gains.length - 1)];
    }
    return sum;
  }

  private void choose(int at, double had, List<int[]> not) {
    OpenLevel level = levels.get(at);
    boolean last = at == levels.size() - 1;
    double later = 0;
    for (int l = at + 1; l < levels.size(); l++) {
      later += candidates[l].length == 0 ? 0 : candidates[l][0].first();
    }
    int tried = 0;
    for (Candidate candidate : candidates[at]) {
      // Candidates are in the order of what they were worth at first; later they are worth less.
      if (had + candidate.first() + later <= bestWorth
          || !last && levels.size() > 2 && tried == DEAREST
          || refused == MOST_REFUSED) {
        break;
      }
      double sum = had + adds(candidate.layer());
      if (sum + later <= bestWorth || !fits(level, candidate.takes())) {
        continue;
      }
      tried++;
      now[at] = candidate;
      if (last) {
        if (!isAllOf(not) && stands()) {
          found = true;
          bestWorth = sum;
          System.arraycopy(now, 0, best, 0, now.length);
        }
      } else {
        take(level, candidate, 1);
        choose(at + 1, sum, not);
        take(level, candidate, -1);
      }
    }
  }

  private boolean stands() {
    boolean stands = canStand.test(layers(now));
    refused += stands ? 0 : 1;
    return stands;
  }

  private static List<KnownLayer> layers(Candidate[] chosen) {
    return Arrays.stream(chosen).map(Candidate::layer).toList();
  }

  private boolean isAllOf(List<int[]> contents) {
    for (int level = 0; level < now.length; level++) {
      if (!Arrays.equals(now[level].layer().counts(), contents.get(level))) {
        return false;
      }
    }
    return true;
  }

  private void take(OpenLevel level, Candidate candidate, int times) {
    int[] kinds = candidate.layer().kinds();
    int[] each = candidate.layer().each();
    for (int i = 0; i < kinds.length; i++) {
      used[kinds[i]] += times * each[i];
      reckon(kinds[i]);
    }
    for (int path : level.paths()) {
      roomLeft[path] -= times * candidate.takes();
    }
  }

  private void reckon(int kind) {
    double[] gains = more[kind];
    double had = worth.of(kind, used[kind]);
    for (int count = 0; count < gains.length; count++) {
      gains[count] = worth.of(kind, used[kind] + count) - had;
    }
  }
}
