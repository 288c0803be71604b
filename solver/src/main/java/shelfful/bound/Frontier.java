package shelfful.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The best piles by height: each is worth more than every lower one. */
final class Frontier {
  private final List<Pile> piles;

  private Frontier(List<Pile> piles) {
    this.piles = piles;
  }

  static Frontier of(List<Pile> all) {
    List<Pile> sorted = new ArrayList<>(all);
    sorted.sort(
        Comparator.comparingLong(Pile::height)
            .thenComparing(Comparator.comparingDouble(Pile::worth).reversed()));
    List<Pile> kept = new ArrayList<>();
    double best = Double.NEGATIVE_INFINITY;
    for (Pile pile : sorted) {
      if (pile.worth() > best) {
        best = pile.worth();
        kept.add(pile);
      }
    }
    return new Frontier(kept);
  }

  List<Pile> piles() {
    return piles;
  }

  /** The best of both. */
  Frontier or(Frontier other) {
    List<Pile> all = new ArrayList<>(piles);
    all.addAll(other.piles);
    return of(all);
  }

  /** Every step under every pile, up to a height. */
  Frontier on(List<Pile> steps, long limit) {
    List<Pile> all = new ArrayList<>();
    for (Pile step : steps) {
      for (Pile pile : piles) {
        if (step.height() + pile.height() > limit) {
          break;
        }
        all.add(step.under(pile));
      }
    }
    return of(all);
  }

  /** The best pile no higher than a limit, or null. */
  Pile best(long height) {
    int low = 0;
    int high = piles.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (piles.get(middle).height() <= height) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0 ? null : piles.get(low - 1);
  }
}
