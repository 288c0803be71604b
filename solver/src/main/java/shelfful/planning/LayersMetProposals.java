package shelfful.planning;

import java.util.List;
import java.util.Random;
import shelfful.planning.Stacking.LevelStand;

/**
 * Proposals made of the layers met so far: new ones are looked for at the prices of the day; when
 * there are enough, whole loads are chosen from them; and now and then a few shelves of the load as
 * it is are given other contents.
 */
final class LayersMetProposals {
  /**
   * How often which proposal is made, in 100.
   *
   * @param priced of all, how many times a new layer is looked for
   * @param exchanged of those, how many times pieces of a known one are exchanged
   * @param rechosen of others, how many times a few shelves are chosen anew
   */
  private record Shares(int priced, int exchanged, int rechosen) {}

  /** Where steps are counted, what takes long costs no more. */
  private static final Shares IN_STEPS = new Shares(45, 50, 50);

  /** In time a share goes with what it brought for the time it took (decision 0038). */
  private static final Shares IN_TIME = new Shares(50, 60, 20);

  private static final int MOST_SHELVES = 4;

  /** How much worth a load may lose to be another, in pieces of plain worth. */
  private static final double MOST_LOSS = 1.5;

  /** So many new layers make it worth while to choose again. */
  private static final int ENOUGH_NEWS = 10;

  private final SketchJudge judge;
  private final PricedFiller filler;
  private final LayerChooser chooser;
  private final Rechooser rechooser;
  private Shares shares = IN_STEPS;

  LayersMetProposals(SketchJudge judge, Appeal appeal) {
    this.judge = judge;
    this.filler = new PricedFiller(judge, appeal);
    ChoiceTask task = new ChoiceTask(judge.stand(), judge.ware(), judge.classes());
    boolean free =
        task.isSimple() && judge.staying().isNothing() && !judge.ware().shares().isAnything();
    this.chooser = free ? new LayerChooser(judge, task) : null;
    this.rechooser = free ? new Rechooser(judge, chooser.problem(), chooser.ware()) : null;
  }

  /** Whether layers met are made use of for this load. */
  boolean isAtWork() {
    return chooser != null;
  }

  /** From now on proposes for a search that ends by time, or after so many steps. */
  void inTime(boolean time) {
    shares = time ? IN_TIME : IN_STEPS;
  }

  /** A changed copy, or null when it is another's turn. */
  Sketch propose(Sketch now, Random random) {
    if (chooser == null) {
      return null;
    }
    if (random.nextInt(100) < shares.priced) {
      price(now, random);
      if (chooser.news() >= ENOUGH_NEWS) {
        Sketch chosen = chooser.choose(now, random);
        if (chosen != null) {
          return chosen;
        }
      }
    }
    if (random.nextInt(100) < shares.rechosen) {
      Sketch sketch = now.copy();
      int shelves = 2 + random.nextInt(MOST_SHELVES - 1);
      double loss = MOST_LOSS * random.nextDouble();
      return rechooser.rechoose(sketch, shelves, loss, random) ? sketch : null;
    }
    return null;
  }

  /** Looks for new contents for a level of the load as it is, or for one of another height. */
  private void price(Sketch now, Random random) {
    Stacking stacking = judge.stack(StackNeeds.of(now, judge.ware().lots())).orElse(null);
    List<int[]> levels = Rebuilder.levels(now);
    if (stacking == null || levels.isEmpty()) {
      return;
    }
    int[] at = levels.get(random.nextInt(levels.size()));
    LevelStand level = stacking.level(at[0], at[1]);
    for (Spot spot : judge.stand().spotsOf(at[0])) {
      int heightClass = random.nextInt(judge.classes().count());
      if (random.nextInt(3) > 0) {
        int[] kinds = judge.byKind(now.counts(at[0], at[1], spot.place()));
        heightClass = judge.classes().of(kinds);
      }
      if (random.nextInt(100) < shares.exchanged) {
        filler.exchange(spot, level, heightClass, chooser.prices(), random);
      } else {
        filler.tryOnce(spot, level, heightClass, chooser.prices(), random);
      }
    }
  }
}
