package shelfful.bound;

import java.util.List;

/**
 * What things cost in one step of the dual.
 *
 * @param worth of a piece of each offer, its price taken off
 * @param posts price of each kind of post
 * @param shelves price of each kind of shelf
 */
record Prices(double[] worth, double[] posts, double[] shelves) {
  /** The cheapest of some kinds of shelf. */
  int cheapest(List<Integer> kinds) {
    int best = kinds.get(0);
    for (int kind : kinds) {
      best = shelves[kind] < shelves[best] ? kind : best;
    }
    return best;
  }
}
