package shelfful.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import shelfful.choice.KnownLayer;
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

  private int[] base(Spot spot, LevelStand level, int heightClass, double[] prices, Random random) {
    boolean onTop = level.postsOn().isEmpty();
    List<KnownLayer> known =
        (onTop ? judge.met().pool().onTop(spot.index()) : judge.met().pool().under(spot.index()))
            .stream()
                .filter(layer -> layer.heightClass() <= heightClass)
                .sorted(Comparator.comparingDouble(layer -> -layer.priced(prices)))
                .limit(BASES)
                .toList();
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
