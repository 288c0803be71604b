package shelfful.choice;

import java.util.ArrayList;
import java.util.Arrays;
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

  private final LayerPool pool;
  private final WorthOfMore more;
  private final long[] roomLeft;
  private final List<OpenLevel> levels;
  private final KnownLayer[] now;
  private final KnownLayer[] best;
  private final LevelOffers[] offers;
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
    this.pool = pool;
    this.levels = List.copyOf(levels);
    this.more = new WorthOfMore(worth, used);
    this.roomLeft = roomLeft.clone();
    this.now = new KnownLayer[levels.size()];
    this.best = new KnownLayer[levels.size()];
    this.offers = new LevelOffers[levels.size()];
  }

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
    bestWorth = atLeast;
    double had = more.ofUsed();
    offer(had);
    choose(0, had, not);
    return found ? List.of(best) : null;
  }

  /**
   * Looks out what each level may be given, and leaves out what can be no part of a better load.
   */
  private void offer(double had) {
    List<List<LevelOffers.Offer>> fitting = levels.stream().map(this::fitting).toList();
    double[] most = new double[levels.size()];
    double all = had;
    for (int level = 0; level < most.length; level++) {
      for (LevelOffers.Offer offer : fitting.get(level)) {
        most[level] = Math.max(most[level], offer.first());
      }
      all += most[level];
    }
    for (int level = 0; level < most.length; level++) {
      double least = bestWorth - (all - most[level]);
      List<LevelOffers.Offer> useful = fitting.get(level);
      useful.removeIf(offer -> offer.first() <= least);
      offers[level] = new LevelOffers(levels.get(level), useful, more);
    }
  }

  private List<LevelOffers.Offer> fitting(OpenLevel level) {
    List<LevelOffers.Offer> fitting = new ArrayList<>();
    collect(pool.under(level.spot()), level, fitting);
    if (level.onTop()) {
      collect(pool.onTop(level.spot()), level, fitting);
    }
    return fitting;
  }

  private void collect(List<KnownLayer> known, OpenLevel level, List<LevelOffers.Offer> fitting) {
    for (KnownLayer layer : known) {
      if (fits(level, level.takes(layer))) {
        fitting.add(new LevelOffers.Offer(layer, more.of(layer)));
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

  private void choose(int at, double had, List<int[]> not) {
    OpenLevel level = levels.get(at);
    LevelOffers here = offers[at];
    boolean last = at == levels.size() - 1;
    double later = 0;
    for (int l = at + 1; l < levels.size(); l++) {
      later += offers[l].most(more);
    }
    int tried = 0;
    for (int i = 0; i < here.size(); i++) {
      // They are in the order of what they were worth at first; later they are worth less.
      if (had + here.first[i] + later <= bestWorth
          || !last && levels.size() > 2 && tried == DEAREST
          || refused == MOST_REFUSED) {
        break;
      }
      double sum = had + here.adds(i, more);
      if (sum + later <= bestWorth || !fits(level, here.takes[i])) {
        continue;
      }
      tried++;
      now[at] = here.layers[i];
      if (last) {
        if (!isAllOf(not) && stands()) {
          found = true;
          bestWorth = sum;
          System.arraycopy(now, 0, best, 0, now.length);
        }
      } else {
        take(level, here, i, 1);
        choose(at + 1, sum, not);
        take(level, here, i, -1);
      }
    }
  }

  private boolean stands() {
    boolean stands = canStand.test(List.of(now));
    refused += stands ? 0 : 1;
    return stands;
  }

  private boolean isAllOf(List<int[]> contents) {
    for (int level = 0; level < now.length; level++) {
      if (!Arrays.equals(now[level].counts(), contents.get(level))) {
        return false;
      }
    }
    return true;
  }

  private void take(OpenLevel level, LevelOffers offered, int content, int times) {
    more.use(offered.layers[content], times);
    for (int path : level.paths()) {
      roomLeft[path] -= times * offered.takes[content];
    }
  }
}
