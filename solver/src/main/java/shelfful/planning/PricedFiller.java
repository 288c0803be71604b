package shelfful.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import shelfful.choice.KnownLayer;
import shelfful.choice.LayerPool;
import shelfful.measure.Mass;
import shelfful.packing.Packed;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;

/**
 * Looks for contents that are dear at the prices of the day, whatever the rest of the load: takes a
 * known content partly apart and fills it up again, the dearest for their room first.
 */
final class PricedFiller {
  private static final int BASES = 4;
  private static final int MOST_EXCHANGES = 4;

  /** So many exchanges are asked about before a content is left as it is. */
  private static final int MOST_ASKED = 3;

  /** So many of the best are looked through for some that were not asked about yet. */
  private static final int MOST_LOOKED_AT = 40;

  /** How far rooms are blurred, so that other exchanges come first each time. */
  private static final double EXCHANGE_NOISE = 0.15;

  private final SketchJudge judge;
  private final Appeal appeal;
  private final int[] most;

  PricedFiller(SketchJudge judge, Appeal appeal) {
    this.judge = judge;
    this.appeal = appeal;
    this.most = new int[judge.ware().kinds().size()];
    for (Lot lot : judge.ware().lots()) {
      most[lot.kind().index()] += lot.size();
    }
  }

  /** Tries once for one shelf of a level; what is found joins the layers met. */
  void tryOnce(Spot spot, LevelStand level, int heightClass, double[] prices, Random random) {
    int[] counts = base(spot, level, heightClass, prices, random);
    double share = 0.1 + 0.5 * random.nextDouble();
    int spared = random.nextInt(counts.length);
    for (int kind = 0; kind < counts.length; kind++) {
      for (int i = counts[kind]; i > 0 && kind != spared; i--) {
        counts[kind] -= random.nextDouble() < share ? 1 : 0;
      }
    }
    new Filling(spot, level, heightClass, counts).fill(order(heightClass, prices, random));
  }

  /**
   * Exchanges a piece or two of one of the dearest contents known for others that are dearer
   * together, those first that take least room for it; goes on from what is found.
   */
  void exchange(Spot spot, LevelStand level, int heightClass, double[] prices, Random random) {
    List<KnownLayer> known = dearest(spot, level, heightClass, prices);
    if (known.isEmpty()) {
      return;
    }
    int[] counts = known.get(random.nextInt(known.size())).counts().clone();
    Filling filling = new Filling(spot, level, heightClass, counts);
    for (int round = 0; round < MOST_EXCHANGES && filling.exchange(prices, random); round++) {
      // each round makes the content dearer
    }
  }

  private List<KnownLayer> dearest(Spot spot, LevelStand level, int heightClass, double[] prices) {
    boolean onTop = level.postsOn().isEmpty();
    LayerPool pool = judge.met().pool();
    return (onTop ? pool.onTop(spot.index()) : pool.under(spot.index()))
        .stream()
            .filter(layer -> layer.heightClass() <= heightClass)
            .sorted(Comparator.comparingDouble(layer -> -layer.priced(prices)))
            .limit(BASES)
            .toList();
  }

  private int[] base(Spot spot, LevelStand level, int heightClass, double[] prices, Random random) {
    List<KnownLayer> known = dearest(spot, level, heightClass, prices);
    return known.isEmpty() || random.nextInt(6) == 0
        ? new int[most.length]
        : known.get(random.nextInt(known.size())).counts().clone();
  }

  private int[] order(int heightClass, double[] prices, Random random) {
    double spread = 0.05 + 0.35 * random.nextDouble();
    double[] score = new double[prices.length];
    for (int kind = 0; kind < score.length; kind++) {
      boolean fits = judge.classes().ofKind(kind) <= heightClass;
      double noise = Math.exp(spread * random.nextGaussian());
      score[kind] = fits ? prices[kind] / appeal.roomTaken(kind) * noise : -1;
    }
    return LevelBuilder.byScore(score);
  }

  private List<int[]> exchanges(int[] counts, int heightClass, double[] prices, Random random) {
    boolean[] may = new boolean[counts.length];
    double[] room = new double[counts.length];
    for (int kind = 0; kind < counts.length; kind++) {
      may[kind] = judge.classes().ofKind(kind) <= heightClass && counts[kind] < most[kind];
      room[kind] = appeal.roomTaken(kind) * Math.exp(EXCHANGE_NOISE * random.nextGaussian());
    }
    return new Exchanges(counts, may, most, prices, room).bestFirst(MOST_LOOKED_AT);
  }

  /** One shelf being filled, by kind. */
  private final class Filling {
    private final Spot spot;
    private final LevelStand level;
    private final int heightClass;
    private final NumberedSpace space;
    private final long limit;
    private int[] counts;
    private Packed setting;

    Filling(Spot spot, LevelStand level, int heightClass, int[] counts) {
      this.spot = spot;
      this.level = level;
      this.heightClass = heightClass;
      this.counts = counts;
      this.space = judge.space(spot, level, judge.classes().height(heightClass));
      this.limit =
          level.shelves().get(spot.place()).massLimit().map(Mass::grams).orElse(Long.MAX_VALUE);
    }

    void fill(int[] order) {
      setting = fits(counts);
      if (setting == null) {
        return;
      }
      double tooLarge = Double.POSITIVE_INFINITY;
      for (int kind : order) {
        boolean fits = judge.classes().ofKind(kind) <= heightClass;
        if (fits && appeal.roomTaken(kind) < tooLarge && counts[kind] < most[kind]) {
          int can = most[kind] - counts[kind];
          if (grow(kind, can) < can) {
            tooLarge = Math.min(tooLarge, appeal.roomTaken(kind) * 0.8);
          }
        }
      }
    }

    /**
     * Makes the content dearer by an exchange that was not asked about before; false if none is.
     */
    boolean exchange(double[] prices, Random random) {
      setting = setting == null ? fits(counts) : setting;
      if (setting == null) {
        return false;
      }
      int asked = 0;
      for (int[] tried : exchanges(counts, heightClass, prices, random)) {
        long tallest = judge.classes().height(judge.classes().of(tried));
        if (judge.answers().isOpen(judge.space(spot, level, tallest), tried)) {
          Packed found = fits(tried);
          if (found != null) {
            setting = found;
            counts = tried;
            return true;
          }
          if (++asked == MOST_ASKED) {
            return false;
          }
        }
      }
      return false;
    }

    private int grow(int kind, int can) {
      return Halving.most(
          appeal.guess(kind, space.area(), counts), can, step -> hasRoomFor(kind, step));
    }

    private boolean hasRoomFor(int kind, int more) {
      int[] tried = counts.clone();
      tried[kind] += more;
      Packed found = fits(tried);
      if (found == null) {
        return false;
      }
      setting = found;
      counts = tried;
      return true;
    }

    private Packed fits(int[] tried) {
      long grams = 0;
      for (WareKind kind : judge.ware().kinds()) {
        grams += tried[kind.index()] * kind.ware().mass().grams();
      }
      return grams > limit ? null : judge.packedKinds(spot, level, tried, setting);
    }
  }
}
