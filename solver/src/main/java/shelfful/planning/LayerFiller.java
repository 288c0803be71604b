package shelfful.planning;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.measure.Mass;
import shelfful.packing.Packed;
import shelfful.planning.Pool.Trial;
import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Zone;

/** Fills one shelf from what is free, kind by kind, as far as the packer finds settings. */
final class LayerFiller {
  /**
   * Ware covering less than this share of a shelf is put on without asking, and asked about at the
   * end.
   */
  private static final double SURELY_FITS = 0.6;

  /**
   * Where one more of a kind found no place, only kinds taking less than this share of its room are
   * tried.
   */
  private static final double MUCH_SMALLER = 0.8;

  private final SketchJudge judge;
  private final Appeal appeal;
  private boolean coarse;

  LayerFiller(SketchJudge judge, Appeal appeal) {
    this.judge = judge;
    this.appeal = appeal;
  }

  /**
   * Whether to fill only as far as goes without asking; each shelf is then asked about once, at the
   * end.
   */
  void coarsely(boolean only) {
    coarse = only;
  }

  /**
   * Adds to a shelf as it lies.
   *
   * @param level where the shelf lies and how much room is over it
   * @param counts by lot on it; changed
   * @param free by lot of what may still be used; changed
   * @param placed by lot of what is in the whole load; changed
   * @param order kinds in the order to try them
   * @return how many pieces were added
   */
  int fill(Spot spot, LevelStand level, int[] counts, Pool pool, int[] order) {
    return fill(new Shelving(spot, level, Set.of(judge.zone(level))), counts, pool, order);
  }

  /**
   * A shelf to fill.
   *
   * @param zones it may come to lie in: a top layer's changes when another is built over it
   */
  record Shelving(Spot spot, LevelStand level, Set<Zone> zones) {}

  /** Adds to a shelf what may stand in any of the zones it may come to lie in. */
  int fill(Shelving shelving, int[] counts, Pool pool, int[] order) {
    if (judge.staying().locked().isLocked(shelving.spot(), shelving.level().z())) {
      return 0;
    }
    Filling filling = new Filling(shelving, counts, pool);
    int added = 0;
    double tooLarge = Double.POSITIVE_INFINITY;
    for (int kind : order) {
      if (appeal.roomTaken(kind) < tooLarge) {
        int more = filling.add(kind);
        added += more;
        if (filling.wasFull) {
          tooLarge = Math.min(tooLarge, appeal.roomTaken(kind) * MUCH_SMALLER);
        }
      }
    }
    return added - filling.giveBack();
  }

  /** One shelf being filled. */
  private final class Filling {
    private final Spot spot;
    private final LevelStand level;
    private final int[] counts;
    private final Pool pool;
    private final Set<Zone> zones;
    private final double area;
    private Packed setting;
    private boolean asked = true;
    private boolean wasFull;

    Filling(Shelving shelving, int[] counts, Pool pool) {
      this.spot = shelving.spot();
      this.level = shelving.level();
      this.counts = counts;
      this.pool = pool;
      this.zones = shelving.zones();
      this.area = judge.space(spot, level, 0).area();
    }

    /** Adds as many of a kind as can be found a setting for. */
    int add(int kind) {
      wasFull = false;
      int can = 0;
      Trial trial = pool.trial();
      for (Lot lot : appeal.lotsOfKind(kind)) {
        int most = most(lot, trial);
        trial.take(lot.index(), most);
        can += most;
      }
      if (can == 0) {
        return 0;
      }
      int before = Arrays.stream(counts).sum();
      growBy(kind, can);
      int after = Arrays.stream(counts).sum();
      wasFull = after - before < can;
      return after - before;
    }

    /** How many of a lot may come on this shelf as far as everything but room goes. */
    private int most(Lot lot, Trial trial) {
      boolean never =
          lot.height() > level.room()
              || lot.forbidden().containsAll(zones)
              || judge.apart().clashesInFiring(lot.index(), pool.placed())
              || judge.apart().clashesOnLayer(lot.index(), counts);
      return never ? 0 : trial.most(lot.index());
    }

    private void growBy(int kind, int can) {
      int guess = appeal.guess(kind, area, judge.byKind(counts));
      int[] held = counts.clone();
      Halving.most(guess, can, step -> hasRoomFor(kind, held, step));
      System.arraycopy(held, 0, counts, 0, counts.length);
    }

    private boolean hasRoomFor(int kind, int[] held, int more) {
      int[] tried = with(kind, held, more);
      if (tried == null || !fits(tried)) {
        return false;
      }
      record(held, tried);
      System.arraycopy(tried, 0, held, 0, held.length);
      return true;
    }

    private boolean fits(int[] tried) {
      boolean surely = appeal.roomTaken(judge.byKind(tried)) < SURELY_FITS * area;
      if (surely || coarse) {
        asked = false;
        return surely;
      }
      Packed found = judge.packed(spot, level, tried, setting);
      setting = found == null ? setting : found;
      asked |= found != null;
      return found != null;
    }

    /** Asks about what was put on unasked, and takes off again what does not fit after all. */
    int giveBack() {
      int given = 0;
      while (!asked && judge.packed(spot, level, counts, setting) == null) {
        int lot = appeal.leastAppealing(counts);
        counts[lot]--;
        pool.take(lot, -1);
        given++;
      }
      return given;
    }

    private void record(int[] before, int[] after) {
      for (int lot = 0; lot < before.length; lot++) {
        pool.take(lot, after[lot] - before[lot]);
      }
    }

    /** So many more of a kind, the worthiest lots first; null when the shelf may not carry them. */
    private int[] with(int kind, int[] held, int more) {
      int[] tried = held.clone();
      int left = more;
      Trial trial = pool.trial();
      for (Lot lot : appeal.lotsOfKind(kind)) {
        int taken = Math.min(left, most(lot, trial));
        boolean clashes = judge.apart().clashesOnLayer(lot.index(), tried);
        if (taken > 0 && !clashes && !clashesWithin(lot, tried)) {
          tried[lot.index()] += taken;
          trial.take(lot.index(), taken);
          left -= taken;
        }
      }
      return left > 0 || grams(tried) > limit() ? null : tried;
    }

    private boolean clashesWithin(Lot lot, int[] tried) {
      for (int other = 0; other < tried.length; other++) {
        if (tried[other] > counts[other] && judge.apart().inFiring(lot.index(), other)) {
          return true;
        }
      }
      return false;
    }

    private long grams(int[] held) {
      long grams = 0;
      List<Lot> lots = judge.ware().lots();
      for (int lot = 0; lot < held.length; lot++) {
        grams += held[lot] * lots.get(lot).grams();
      }
      return grams;
    }

    private long limit() {
      Optional<Mass> limit = level.shelves().get(spot.place()).massLimit();
      return limit.map(Mass::grams).orElse(Long.MAX_VALUE);
    }
  }
}
