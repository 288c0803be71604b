package shelfful.planning;

import java.util.List;
import shelfful.load.LeftOut;

/**
 * What of a list may go into a firing at all, sorted into kinds and lots, and what may not, with
 * its reason.
 *
 * @param kinds by index
 * @param lots by index
 * @param bundles how many bundles the lots make up
 * @param waiting pieces that cannot go into this firing whatever the setting
 */
record ReadyWare(List<WareKind> kinds, List<Lot> lots, int bundles, List<LeftOut> waiting) {
  ReadyWare {
    kinds = List.copyOf(kinds);
    lots = List.copyOf(lots);
    waiting = List.copyOf(waiting);
  }

  int pieces() {
    return lots.stream().mapToInt(Lot::size).sum();
  }
}
