package shelfful.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shelfful.bound.ColumnLevels.Rise;

/** One column and one or two that stand on it. */
final class CarriedColumns implements Cluster {
  private final BoundTask task;
  private final ColumnLevels lower;
  private final List<Built> ways = new ArrayList<>();
  private final List<ColumnLevels> uppers;

  /** Some of the upper columns are built. */
  private record Built(List<ColumnLevels> uppers, CarryingLevel level) {}

  CarriedColumns(BoundTask task, ColumnLevels lower, List<ColumnLevels> uppers) {
    this.task = task;
    this.lower = lower;
    this.uppers = uppers;
    List<ColumnLevels> buildable = uppers.stream().filter(ColumnLevels::canBeBuilt).toList();
    if (lower.canBeBuilt()) {
      boolean alike = buildable.size() == 2 && buildable.get(0).isLike(buildable.get(1));
      for (ColumnLevels one : alike ? buildable.subList(0, 1) : buildable) {
        add(List.of(one));
      }
      if (buildable.size() == 2) {
        add(buildable);
      }
    }
  }

  private void add(List<ColumnLevels> built) {
    ways.add(new Built(built, new CarryingLevel(task, lower, built)));
  }

  @Override
  public void best(Prices prices, Usage usage) {
    lower.prepare(prices);
    uppers.forEach(upper -> upper.prepare(prices));
    double most = Math.max(worth(lower), uppers.stream().mapToDouble(CarriedColumns::worth).sum());
    Stack best = null;
    for (Built way : ways) {
      way.level.prepare(prices);
      Stack stack = best(way, most);
      if (stack != null) {
        best = stack;
        most = stack.worth;
      }
    }
    if (best != null) {
      take(best, usage);
    } else if (most == worth(lower)) {
      LoneColumn.take(lower, lower.onFloor(), usage);
    } else {
      uppers.forEach(upper -> LoneColumn.take(upper, upper.onFloor(), usage));
    }
  }

  @Override
  public boolean canHold(int offer) {
    return lower.canHold(offer) || uppers.stream().anyMatch(upper -> upper.canHold(offer));
  }

  private static double worth(ColumnLevels column) {
    ColumnLevels.Standing standing = column.onFloor();
    return standing == null ? 0 : Math.max(0, standing.worth());
  }

  /** What stands on the carrying level for a class: the posts and all over it. */
  private record Upper(double worth, int post, Pile pile) {}

  private record Stack(
      Built way, double worth, Rise rise, List<Upper> uppers, LevelWorth content) {}

  private record Candidate(
      double without, double atMost, Rise rise, List<Upper> uppers, List<Integer> classes) {}

  /** The best stack worth more than some already known, or null. */
  private Stack best(Built way, double known) {
    List<Candidate> candidates = new ArrayList<>();
    int classes = task.heights().length + 1;
    int other = way.uppers.size() > 1 ? classes : 1;
    Candidate[] found = new Candidate[classes * other];
    List<Frontier> piles = way.uppers.stream().map(ColumnLevels::piles).toList();
    for (Rise rise : lower.rises()) {
      Upper[] first = byClass(way.uppers.get(0), piles.get(0), rise.top());
      Upper[] second = other > 1 ? byClass(way.uppers.get(1), piles.get(1), rise.top()) : null;
      for (int a = 0; a < classes; a++) {
        for (int b = 0; b < other && first[a] != null; b++) {
          if (second == null || second[b] != null) {
            consider(found, a * other + b, rise, first[a], second == null ? null : second[b]);
          }
        }
      }
    }
    for (int at = 0; at < found.length; at++) {
      if (found[at] != null) {
        List<Integer> key = new ArrayList<>(List.of(at / other - 1));
        if (other > 1) {
          key.add(at % other - 1);
        }
        Candidate one = found[at];
        double most = one.without + way.level.atMost(key);
        candidates.add(new Candidate(one.without, most, one.rise, one.uppers, key));
      }
    }
    candidates.sort(Comparator.comparingDouble(Candidate::atMost).reversed());
    return exact(way, candidates, known);
  }

  private static void consider(Candidate[] found, int at, Rise rise, Upper one, Upper two) {
    boolean pair = two != null;
    double worth = rise.worth() + one.worth + (pair ? two.worth : 0);
    if (found[at] == null || worth > found[at].without) {
      found[at] = new Candidate(worth, 0, rise, pair ? List.of(one, two) : List.of(one), List.of());
    }
  }

  private Stack exact(Built way, List<Candidate> candidates, double known) {
    Stack best = null;
    double most = known;
    for (Candidate one : candidates) {
      if (one.atMost <= most) {
        break;
      }
      LevelWorth content = way.level.level(one.classes);
      double worth = one.without + (content == null ? 0 : content.most(way.level.worth()));
      if (worth > most) {
        most = worth;
        best = new Stack(way, worth, one.rise, one.uppers, content);
      }
    }
    return best;
  }

  /** By class under an upper column's shelves, from −1: the best that it can be. */
  private Upper[] byClass(ColumnLevels upper, Frontier piles, long from) {
    Upper[] best = new Upper[task.heights().length + 1];
    for (int p = 0; p < task.postChoice().size(); p++) {
      if (!task.postChoice().isThere(p, upper.posts())) {
        continue;
      }
      long length = task.postChoice().length(p);
      Pile pile = piles.best(task.ceiling() - from - length - upper.thickness());
      int k = task.classUnder(length - task.headroom()) + 1;
      if (pile != null) {
        double worth = pile.worth() - upper.postPrice(p);
        if (best[k] == null || worth > best[k].worth) {
          best[k] = new Upper(worth, p, pile);
        }
      }
    }
    return best;
  }

  private void take(Stack stack, Usage usage) {
    usage.add(stack.worth);
    usage.takePosts(stack.rise.first(), lower.posts());
    usage.takeShelves(lower);
    usage.take(lower, stack.rise.below());
    usage.takePieces(stack.content);
    for (int u = 0; u < stack.uppers.size(); u++) {
      Upper upper = stack.uppers.get(u);
      usage.takePosts(upper.post, stack.way.uppers.get(u).posts());
      usage.take(stack.way.uppers.get(u), upper.pile);
    }
  }
}
