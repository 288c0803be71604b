package shelfful.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The contents of a pool for each shelf place, the dearest first. */
final class DearestContents {
  private static final int FEW = 3;

  private final ChoiceProblem problem;
  private final double[] prices;
  private final List<List<KnownLayer>> under = new ArrayList<>();
  private final List<List<KnownLayer>> onTop = new ArrayList<>();

  DearestContents(ChoiceProblem problem, LayerPool pool, double[] prices) {
    this.problem = problem;
    this.prices = prices;
    Comparator<KnownLayer> dearestFirst =
        Comparator.comparingDouble(layer -> -layer.priced(prices));
    for (int spot = 0; spot < problem.spots(); spot++) {
      List<KnownLayer> below = new ArrayList<>(pool.under(spot));
      List<KnownLayer> any = new ArrayList<>(pool.onTop(spot));
      any.addAll(below);
      below.sort(dearestFirst);
      any.sort(dearestFirst);
      under.add(below);
      onTop.add(any);
    }
  }

  private List<KnownLayer> at(int spot, boolean top) {
    return (top ? onTop : under).get(spot);
  }

  /** Whether any content of a column's shelves is just this tall. */
  boolean isKnown(int column, int heightClass, boolean top) {
    for (int spot : problem.columns().get(column).spots()) {
      for (KnownLayer layer : at(spot, top)) {
        if (layer.heightClass() == heightClass) {
          return true;
        }
      }
    }
    return false;
  }

  /** The price of the dearest content that is no taller than asked; 0 when there is none. */
  double most(int spot, int heightClass, boolean top) {
    for (KnownLayer layer : at(spot, top)) {
      if (layer.heightClass() <= heightClass) {
        return layer.priced(prices);
      }
    }
    return 0;
  }

  /**
   * The few contents that are dearest when no kind is bought more often than there still is.
   *
   * @param used how many of each kind are bought already
   */
  List<KnownLayer> few(int spot, int heightClass, boolean top, int[] used) {
    List<KnownLayer> few = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    for (KnownLayer layer : at(spot, top)) {
      boolean enough = few.size() == FEW;
      double last = enough ? values.get(FEW - 1) : Double.NEGATIVE_INFINITY;
      if (enough && layer.priced(prices) <= last) {
        break;
      }
      double value = layer.heightClass() > heightClass ? last : still(layer, used);
      if (value > last) {
        insert(layer, value, few, values);
      }
    }
    return few;
  }

  private static void insert(
      KnownLayer layer, double value, List<KnownLayer> few, List<Double> values) {
    int at = few.size();
    while (at > 0 && values.get(at - 1) < value) {
      at--;
    }
    few.add(at, layer);
    values.add(at, value);
    if (few.size() > FEW) {
      few.remove(FEW);
      values.remove(FEW);
    }
  }

  private double still(KnownLayer layer, int[] used) {
    double value = 0;
    for (int kind = 0; kind < used.length; kind++) {
      int left = Math.max(0, problem.worth().most(kind) - used[kind]);
      value += prices[kind] * Math.min(left, layer.counts()[kind]);
    }
    return value;
  }
}
