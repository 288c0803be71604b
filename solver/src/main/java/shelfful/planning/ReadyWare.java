package shelfful.planning;

import java.util.List;
import shelfful.load.LeftOut;

/**
 * What of a list may go into a firing at all, sorted into kinds and lots, and what may not, with
 * its reason.
 *
 * @param kinds by index
 * @param lots by index; those of single pieces first, then those of piles
 * @param bundles how many bundles the lots make up
 * @param waiting pieces that cannot go into this firing whatever the setting
 * @param shares how the lots draw on the same pieces
 */
record ReadyWare(
    List<WareKind> kinds, List<Lot> lots, int bundles, List<LeftOut> waiting, Shares shares) {
  ReadyWare {
    kinds = List.copyOf(kinds);
    lots = List.copyOf(lots);
    waiting = List.copyOf(waiting);
  }

  /** The lots of single pieces: every piece is in exactly one. */
  List<Lot> singles() {
    return shares.isAnything()
        ? lots.stream().filter(lot -> !shares.isTower(lot.index())).toList()
        : lots;
  }

  int pieces() {
    return lots.stream().mapToInt(Lot::size).sum();
  }
}
