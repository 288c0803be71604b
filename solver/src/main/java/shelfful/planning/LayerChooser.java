package shelfful.planning;

import java.util.List;
import shelfful.choice.ChoiceProblem;
import shelfful.choice.ChosenLevel;
import shelfful.choice.LayerChoice;
import shelfful.choice.Prices;

/**
 * Makes whole loads of the layers met so far: settles a price for each kind of ware, and chooses
 * the layers that are worth most together.
 */
final class LayerChooser {
  private static final int FIRST_ROUNDS = 50;
  private static final int ROUNDS = 15;
  private static final long NODES = 1500;

  private final SketchJudge judge;
  private final ChoiceProblem problem;
  private final Prices prices;
  private final ChosenWare ware;
  private long known;
  private boolean settled;

  LayerChooser(SketchJudge judge, ChoiceTask task) {
    this.judge = judge;
    this.problem = task.problem();
    this.prices = new Prices(problem);
    this.ware = new ChosenWare(judge);
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

  /** The best load that can be made of the layers met, or null when none beats the given one. */
  Sketch choose(Sketch now) {
    double worth = worth(now);
    known = judge.met().pool().added();
    prices.settle(judge.met().pool(), settled ? ROUNDS : FIRST_ROUNDS, worth);
    settled = true;
    LayerChoice choice =
        new LayerChoice(problem, judge.met().pool(), prices.each(), this::canStand);
    List<List<ChosenLevel>> levels = choice.better(worth, NODES);
    Sketch chosen = levels == null ? null : ware.sketch(levels);
    // The choice knows nothing of zones: what they forbid is left out when the ware is given out.
    return chosen == null || worth(chosen) < worth ? null : chosen;
  }

  private double worth(Sketch sketch) {
    int[] placed = sketch.placed();
    double worth = 0;
    for (Lot lot : judge.ware().lots()) {
      worth += placed[lot.index()] * ChoiceTask.worth(lot);
    }
    return worth;
  }

  private boolean canStand(List<List<ChosenLevel>> levels) {
    return judge.stack(needs(levels)).isPresent();
  }

  private StackNeeds needs(List<List<ChosenLevel>> levels) {
    StackNeeds needs = new StackNeeds(levels.size());
    for (int c = 0; c < levels.size(); c++) {
      for (ChosenLevel level : levels.get(c)) {
        needs = needs.with(c, needs.levels(c), level(level));
      }
    }
    return needs;
  }

  private StackNeeds.Level level(ChosenLevel level) {
    long[] grams = new long[level.contents().size()];
    for (int place = 0; place < grams.length; place++) {
      grams[place] = ware.grams(level.contents().get(place));
    }
    return new StackNeeds.Level(judge.classes().height(level.heightClass()), grams);
  }
}
