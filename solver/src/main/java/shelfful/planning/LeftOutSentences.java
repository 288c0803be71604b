package shelfful.planning;

import java.util.Set;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.ware.Piece;

/** The words for pieces that wait because of others. */
final class LeftOutSentences {
  private LeftOutSentences() {}

  static LeftOut setWaits(Piece piece, Set<String> others) {
    return new LeftOut(
        piece.id(),
        Reason.SET_WAITS,
        "It only goes in together with " + String.join(", ", others) + ", which must wait.",
        "Make the rest of its set ready, or take it out of the set.");
  }
}
