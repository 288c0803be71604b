package shelfful.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Chooses the layers worth most together from a pool, by branch and bound: dearest first at the
 * prices, cut off where the stacks still to come and the buyers' gain cannot beat the best. Exact
 * for the few dearest contents of each height unless the number of nodes runs out.
 */
public final class LayerChoice {
  private static final int CLASSES_TRIED = 5;
  private static final double LEAST_GAIN = 1e-6;

  private final ChoiceProblem problem;
  private final StackCheck check;
  private final double[] prices;
  private final PricedStacks stacks;
  private final DearestContents offers;
  private final List<List<ChosenLevel>> chosen = new ArrayList<>();
  private final boolean[] carries;
  private final int[] used;
  private long nodesLeft;
  private double bestWorth;

  /** Set when a whole stack failed: posts or shelves are scarce, so unfinished ones are checked. */
  private boolean checkAlways;

  private List<List<ChosenLevel>> best;

  /** Ready to choose from the pool as it is. */
  public LayerChoice(ChoiceProblem problem, LayerPool pool, double[] prices, StackCheck check) {
    this.problem = problem;
    this.check = check;
    this.prices = prices;
    this.stacks = new PricedStacks(problem, pool);
    stacks.at(prices);
    this.offers = new DearestContents(problem, pool, prices);
    this.carries = new boolean[problem.columns().size()];
    for (int c = 0; c < carries.length; c++) {
      carries[c] = !problem.above(c).isEmpty();
      chosen.add(new ArrayList<>());
    }
    this.used = new int[problem.worth().kinds()];
  }

  /**
   * The best levels for each column, or null when none are worth more than what is known.
   *
   * @param known worth that is to be beaten
   */
  public List<List<ChosenLevel>> better(double known, long mostNodes) {
    bestWorth = known;
    best = null;
    nodesLeft = mostNodes;
    column(0, new long[problem.columns().size()]);
    return best;
  }

  /** The worth of the last answer. */
  public double worth() {
    return bestWorth;
  }

  private long room(int c, long[] taken) {
    int under = problem.columns().get(c).below();
    if (under < 0) {
      return problem.columns().get(c).capacity();
    }
    return chosen.get(under).isEmpty() ? -1 : room(under, taken) - taken[under];
  }

  /** The most that columns from the given one on can add, the given one aside. */
  private double later(int c, long[] taken) {
    double value = 0;
    for (int other = c + 1; other < problem.columns().size(); other++) {
      int below = problem.columns().get(other).below();
      if (below < 0) {
        value += stacks.value(other, problem.columns().get(other).capacity());
      } else if (below < c && !chosen.get(below).isEmpty()) {
        value += stacks.value(other, room(other, taken));
      }
    }
    return value;
  }

  private void column(int c, long[] taken) {
    double now = problem.worth().of(used);
    if (c == problem.columns().size()) {
      if (now > bestWorth + LEAST_GAIN) {
        if (check.canStand(chosen)) {
          bestWorth = now;
          best = chosen.stream().map(List::copyOf).toList();
        } else {
          checkAlways = true;
        }
      }
      return;
    }
    long room = room(c, taken);
    if (room < 0) {
      column(c + 1, taken);
      return;
    }
    int levels = problem.columns().get(c).mostLevels();
    if (!carries[c]) {
      top(c, room, levels, taken);
    }
    middle(new Node(c, room, levels, problem.classes() - 1, null), taken);
  }

  private boolean hopeless(double toCome) {
    return problem.worth().of(used) + problem.worth().gain(used, prices) + toCome
        <= bestWorth + LEAST_GAIN;
  }

  /** A place in the tree: levels still to choose for one column. */
  private record Node(int column, long room, int levels, int highestClass, ChosenLevel top) {}

  private void top(int c, long room, int levels, long[] taken) {
    double later = later(c, taken);
    for (int k : classes(c, room, levels, problem.classes() - 1, true)) {
      long left = room - problem.columns().get(c).top()[k];
      double toCome = stacks.levels(c, levels - 1, left) + stacks.top(c, k) + later;
      if (nodesLeft <= 0 || hopeless(toCome)) {
        continue;
      }
      contents(
          new Filling(c, k, true, toCome - stacks.top(c, k)),
          0,
          new ArrayList<>(),
          level -> middle(new Node(c, left, levels - 1, problem.classes() - 1, level), taken));
    }
  }

  private void middle(Node node, long[] taken) {
    int c = node.column();
    nodesLeft--;
    double later = later(c, taken);
    double here =
        carries[c] ? stacks.more(c, node.room()) : stacks.levels(c, node.levels(), node.room());
    if (nodesLeft <= 0 || hopeless(here + later)) {
      return;
    }
    if (node.levels() > 0) {
      for (int k : classes(c, node.room(), node.levels(), node.highestClass(), false)) {
        long left = node.room() - problem.columns().get(c).middle()[k];
        double rest = carries[c] ? stacks.more(c, left) : stacks.levels(c, node.levels() - 1, left);
        if (nodesLeft > 0 && !hopeless(stacks.middle(c, k) + rest + later)) {
          contents(
              new Filling(c, k, false, rest + later),
              0,
              new ArrayList<>(),
              level -> {
                chosen.get(c).add(level);
                if (!checkAlways || check.canStand(chosen)) {
                  middle(new Node(c, left, node.levels() - 1, k, node.top()), taken);
                }
                chosen.get(c).remove(chosen.get(c).size() - 1);
              });
        }
      }
    }
    close(node, taken);
  }

  private void close(Node node, long[] taken) {
    int c = node.column();
    long[] next = taken.clone();
    next[c] = room(c, taken) - node.room();
    if (node.top() != null) {
      chosen.get(c).add(node.top());
    }
    column(c + 1, next);
    if (node.top() != null) {
      chosen.get(c).remove(chosen.get(c).size() - 1);
    }
  }

  /** Height classes that go in, those that promise most first. */
  private List<Integer> classes(int c, long room, int levels, int highest, boolean top) {
    StackColumn column = problem.columns().get(c);
    List<Integer> fitting = new ArrayList<>();
    double[] promise = new double[problem.classes()];
    for (int k = 0; k <= highest; k++) {
      long takes = top ? column.top()[k] : column.middle()[k];
      double value = top ? stacks.top(c, k) : stacks.middle(c, k);
      if (takes <= room && offers.isKnown(c, k, top)) {
        fitting.add(k);
        promise[k] = value + stacks.levels(c, levels - 1, room - takes);
      }
    }
    fitting.sort(Comparator.comparingDouble(k -> -promise[k]));
    return fitting.subList(0, Math.min(CLASSES_TRIED, fitting.size()));
  }

  /** A level whose places are being given contents. */
  private record Filling(int column, int heightClass, boolean onTop, double rest) {}

  private interface Next {
    void with(ChosenLevel level);
  }

  private void contents(Filling filling, int place, List<KnownLayer> sofar, Next next) {
    int[] spots = problem.columns().get(filling.column()).spots();
    if (place == spots.length) {
      int highest = sofar.stream().mapToInt(KnownLayer::heightClass).max().orElse(0);
      if (highest == filling.heightClass()) {
        next.with(new ChosenLevel(highest, filling.onTop(), sofar));
      }
      return;
    }
    for (KnownLayer layer :
        offers.few(spots[place], filling.heightClass(), filling.onTop(), used)) {
      count(layer, 1);
      sofar.add(layer);
      if (nodesLeft > 0 && !hopeless(filling.rest() + rest(filling, place + 1))) {
        contents(filling, place + 1, sofar, next);
      }
      sofar.remove(sofar.size() - 1);
      count(layer, -1);
    }
  }

  /** What the places still open may hold at most. */
  private double rest(Filling filling, int from) {
    int[] spots = problem.columns().get(filling.column()).spots();
    double value = 0;
    for (int place = from; place < spots.length; place++) {
      value += offers.most(spots[place], filling.heightClass(), filling.onTop());
    }
    return value;
  }

  private void count(KnownLayer layer, int times) {
    int[] kinds = layer.kinds();
    int[] each = layer.each();
    for (int i = 0; i < kinds.length; i++) {
      used[kinds[i]] += times * each[i];
    }
  }
}
