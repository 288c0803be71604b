package shelfful.planning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.ware.Piece;
import shelfful.ware.Zone;

/**
 * Pieces that may take each other's places: of one batch, one part, and sets of one make-up; or
 * piles that can be made of such pieces, all in one way.
 *
 * @param index among the lots of a request
 * @param kind what they are to the shelf
 * @param pieces in the order of their numbers; none for piles
 * @param worth of one piece, in points
 * @param height from the shelf to the top of the tallest, tolerance included, in micrometres
 * @param grams of one piece
 * @param glazeId of the glaze on it, if any
 * @param forbidden zones it must not be in
 * @param liked zones it likes; empty when any will do
 * @param bundle lots with the same number go in together in equal numbers
 * @param order whose order it belongs to, or −1
 * @param hold whether its pieces may be moved
 * @param tower how the piles are made; empty for single pieces
 */
record Lot(
    int index,
    WareKind kind,
    List<Piece> pieces,
    long worth,
    long height,
    long grams,
    Optional<String> glazeId,
    Set<Zone> forbidden,
    Set<Zone> liked,
    int bundle,
    int order,
    Hold hold,
    Optional<Tower> tower) {

  Lot {
    pieces = List.copyOf(pieces);
  }

  /** How many single pieces it has; piles are made of those of others. */
  int size() {
    return pieces.size();
  }

  boolean isKept() {
    return hold == Hold.KEPT;
  }

  boolean mustGo() {
    return tower
        .map(Tower::mustGo)
        .orElseGet(() -> hold == Hold.MATE || pieces.get(0).batch().mustGo());
  }
}
