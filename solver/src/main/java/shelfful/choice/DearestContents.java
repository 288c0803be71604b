package shelfful.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The contents of a pool for each shelf place, the dearest first. */
final class DearestContents {
  private static final int FEW = 3;

  private final ChoiceProblem problem;
  private final double[] prices;
  private final List<Shelf> under = new ArrayList<>();
  private final List<Shelf> onTop = new ArrayList<>();

  /** Values of the few that were found last, the dearest first. */
  private final double[] values = new double[FEW + 1];

  DearestContents(ChoiceProblem problem, LayerPool pool, double[] prices) {
    this.problem = problem;
    this.prices = prices;
    for (int spot = 0; spot < problem.spots(); spot++) {
      List<Offer> below = offers(pool.under(spot));
      List<Offer> any = offers(pool.onTop(spot));
      any.addAll(below);
      under.add(new Shelf(below, problem.classes()));
      onTop.add(new Shelf(any, problem.classes()));
    }
  }

  private List<Offer> offers(List<KnownLayer> known) {
    List<Offer> offers = new ArrayList<>(known.size());
    for (KnownLayer layer : known) {
      offers.add(new Offer(layer, layer.priced(prices)));
    }
    return offers;
  }

  /** A content and what it costs when nothing is bought yet. */
  private record Offer(KnownLayer layer, double price) {}

  /** What is on offer for one place, with what is known of each height class. */
  private static final class Shelf {
    final List<Offer> offers;
    final boolean[] known;

    /** The price of the dearest content that is no taller. */
    final double[] most;

    Shelf(List<Offer> offers, int classes) {
      this.offers = offers;
      this.known = new boolean[classes];
      this.most = new double[classes];
      offers.sort(Comparator.comparingDouble(offer -> -offer.price()));
      for (Offer offer : offers) {
        int own = offer.layer().heightClass();
        known[own] = true;
        most[own] = Math.max(most[own], offer.price());
      }
      for (int k = 1; k < classes; k++) {
        most[k] = Math.max(most[k], most[k - 1]);
      }
    }
  }

  private Shelf at(int spot, boolean top) {
    return (top ? onTop : under).get(spot);
  }

  /** Whether any content of a column's shelves is just this tall. */
  boolean isKnown(int column, int heightClass, boolean top) {
    for (int spot : problem.columns().get(column).spots()) {
      if (at(spot, top).known[heightClass]) {
        return true;
      }
    }
    return false;
  }

  /** The price of the dearest content that is no taller than asked; 0 when there is none. */
  double most(int spot, int heightClass, boolean top) {
    return at(spot, top).most[heightClass];
  }

  /**
   * The few contents that are dearest when no kind is bought more often than there still is.
   *
   * @param used how many of each kind are bought already
   */
  List<KnownLayer> few(int spot, int heightClass, boolean top, int[] used) {
    List<KnownLayer> few = new ArrayList<>(FEW + 1);
    for (Offer offer : at(spot, top).offers) {
      double last = few.size() == FEW ? values[FEW - 1] : Double.NEGATIVE_INFINITY;
      if (offer.price() <= last) {
        break;
      }
      if (offer.layer().heightClass() <= heightClass) {
        double value = still(offer.layer(), used);
        if (value > last) {
          insert(offer.layer(), value, few);
        }
      }
    }
    return few;
  }

  private void insert(KnownLayer layer, double value, List<KnownLayer> few) {
    int at = few.size();
    while (at > 0 && values[at - 1] < value) {
      values[at] = values[at - 1];
      at--;
    }
    few.add(at, layer);
    values[at] = value;
    if (few.size() > FEW) {
      few.remove(FEW);
    }
  }

  private double still(KnownLayer layer, int[] used) {
    int[] kinds = layer.kinds();
    int[] each = layer.each();
    double value = 0;
    for (int i = 0; i < kinds.length; i++) {
      int left = Math.max(0, problem.worth().most(kinds[i]) - used[kinds[i]]);
      value += prices[kinds[i]] * Math.min(left, each[i]);
    }
    return value;
  }
}
