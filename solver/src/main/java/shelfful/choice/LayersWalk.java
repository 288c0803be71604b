package shelfful.choice;

import java.util.List;
import java.util.Random;

/**
 * Looks for a better load among layers known to fit, by walking from load to load: one to three
 * levels are taken off and others put on, each the dearest for its height of a few drawn at random,
 * as long as any go in. A load that is worth less is gone on from with a chance that falls with the
 * loss (N. Metropolis and others, "Equation of state calculations by fast computing machines", J.
 * Chem. Phys. 21, 1953). The walk goes on from where it last was, over a pool that grows.
 */
public final class LayersWalk {
  private static final int MOST_OFF = 3;

  /** In pieces of plain worth: a loss of so much is gone on from once in e times. */
  private static final double WARMTH = 0.4;

  /** The same measure, of what is added to the worth of a content so that others come first. */
  private static final double MOST_NOISE = 0.5;

  /** A walk that lags so much behind goes on from the load that is known. */
  private static final double MOST_BEHIND = 2.5;

  private static final double LEAST_GAIN = 1e-6;

  /** A load that is worth so much less than thought tells that rules matter here. */
  private static final double MUCH_LESS = 0.5;

  /** A check takes as long as so many steps. */
  private static final int STEPS_OF_A_CHECK = 5;

  private final ChoiceProblem problem;
  private final LayerPool pool;
  private final LoadCheck check;
  private WalkedLoad load;
  private LevelDraw draw;
  private double here = Double.NEGATIVE_INFINITY;

  /** Set when a load came out worth less than thought: from then on each is checked. */
  private boolean careful;

  /** Ready to walk over what a pool holds, and will hold. */
  public LayersWalk(ChoiceProblem problem, LayerPool pool, LoadCheck check) {
    this.problem = problem;
    this.pool = pool;
    this.check = check;
  }

  /**
   * The best load met until so many steps in a row bring nothing better, or null when none is worth
   * more than what is known.
   *
   * @param known worth that is to be beaten
   * @param from levels of the load that is worth so much, by column
   * @param steps in a row; checks count for several
   * @param random where chance comes from
   */
  public List<List<ChosenLevel>> better(
      double known, List<List<ChosenLevel>> from, int steps, Random random) {
    if (here < known - MOST_BEHIND) {
      beginAt(from, known);
    }
    draw.valueHeight();
    double most = known + LEAST_GAIN;
    List<List<ChosenLevel>> best = null;
    int luckless = 0;
    while (luckless < steps) {
      luckless++;
      load.mark();
      change(random);
      double there = load.worth();
      double lowest = here + WARMTH * Math.log(1 - random.nextDouble());
      if (there > most || careful && there >= lowest) {
        there = checked(there);
        luckless += STEPS_OF_A_CHECK;
      }
      if (there > most) {
        most = there + LEAST_GAIN;
        best = load.inOrder();
        luckless = 0;
      }
      if (there >= lowest) {
        here = there;
      } else {
        load.back();
      }
    }
    return best;
  }

  /** The load that the walk is at, or null if it is worth less than asked. */
  public List<List<ChosenLevel>> now(double least) {
    return here < least ? null : load.inOrder();
  }

  private double checked(double promised) {
    double real = check.worth(load.inOrder());
    careful |= real < promised - MUCH_LESS;
    return real;
  }

  private void beginAt(List<List<ChosenLevel>> levels, double worth) {
    load = new WalkedLoad(problem);
    here = worth;
    for (int c = 0; c < levels.size(); c++) {
      for (ChosenLevel level : levels.get(c)) {
        load.putOn(c, level);
      }
    }
    draw = new LevelDraw(problem, pool, load);
  }

  private void change(Random random) {
    int off = 1 + random.nextInt(MOST_OFF);
    for (int i = 0; i < off && load.levels() > 0; i++) {
      load.takeOff(random.nextInt(load.levels()));
    }
    double noise = MOST_NOISE * random.nextDouble();
    int columns = problem.columns().size();
    int first = random.nextInt(columns);
    boolean grown = true;
    while (grown) {
      grown = false;
      for (int i = 0; i < columns; i++) {
        grown |= draw.putOn((first + i) % columns, noise, random);
      }
    }
  }
}
