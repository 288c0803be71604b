package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import shelfful.choice.ChoiceProblem;
import shelfful.choice.ChosenLevel;
import shelfful.choice.KnownLayer;
import shelfful.choice.LayersWalk;
import shelfful.choice.Prices;

/**
 * Makes whole loads of the layers met so far: settles a price for each kind of ware, and walks on
 * from the last load made of them.
 */
final class LayerChooser {
  private static final int FIRST_ROUNDS = 50;
  private static final int ROUNDS = 15;

  /** So many in a row that bring nothing end a walk: some thirty milliseconds. */
  private static final int STEPS = 2500;

  /** Of 100 walks that led to nothing better, after how many their load is tried all the same. */
  private static final int OTHERS = 30;

  /** How much less such a load may be worth, in pieces of plain worth. */
  private static final double MOST_LOSS = 1.5;

  private final SketchJudge judge;
  private final ChoiceProblem problem;
  private final Prices prices;
  private final ChosenWare ware;
  private final LayersWalk walk;
  private long known;
  private boolean settled;

  LayerChooser(SketchJudge judge, ChoiceTask task) {
    this.judge = judge;
    this.problem = task.problem();
    this.prices = new Prices(problem);
    this.ware = new ChosenWare(judge);
    this.walk = new LayersWalk(problem, judge.met().pool(), new RealWorth(judge, ware));
  }

  double[] prices() {
    return prices.each();
  }

  ChoiceProblem problem() {
    return problem;
  }

  ChosenWare ware() {
    return ware;
  }

  /** How many contents were met since the last choice. */
  long news() {
    return judge.met().pool().added() - known;
  }

  /**
   * A load made of layers met that is better than the given one, now and then another that is worth
   * nearly as much; null when none was come by.
   */
  Sketch choose(Sketch now, Random random) {
    double worth = ware.worth(now.placed());
    known = judge.met().pool().added();
    prices.settle(judge.met().pool(), settled ? ROUNDS : FIRST_ROUNDS, worth);
    settled = true;
    List<List<ChosenLevel>> levels = walk.better(worth, levels(now), STEPS, random);
    if (levels == null && random.nextInt(100) < OTHERS) {
      levels = walk.now(worth - MOST_LOSS * random.nextDouble());
    }
    return levels == null ? null : ware.sketch(levels);
  }

  private List<List<ChosenLevel>> levels(Sketch sketch) {
    List<List<ChosenLevel>> levels = new ArrayList<>();
    for (int c = 0; c < sketch.columns(); c++) {
      List<ChosenLevel> column = new ArrayList<>();
      for (int l = 0; l < sketch.levels(c); l++) {
        column.add(level(sketch, c, l));
      }
      levels.add(column);
    }
    return levels;
  }

  private ChosenLevel level(Sketch sketch, int column, int level) {
    List<KnownLayer> contents = new ArrayList<>();
    int highest = 0;
    for (int place = 0; place < sketch.places(column, level); place++) {
      int[] kinds = judge.byKind(sketch.counts(column, level, place));
      int heightClass = judge.classes().of(kinds);
      contents.add(new KnownLayer(kinds, heightClass));
      highest = Math.max(highest, heightClass);
    }
    return new ChosenLevel(highest, judge.isOnTop(sketch, column, level), contents);
  }
}
