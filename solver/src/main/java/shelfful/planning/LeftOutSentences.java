package shelfful.planning;

import java.util.List;
import java.util.stream.Collectors;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.ware.Part;
import shelfful.ware.Piece;

/**
 * The words for pieces that wait because of others. They name batches, not pieces, so that all
 * pieces of a batch that wait for the same reason say the same.
 */
final class LeftOutSentences {
  private LeftOutSentences() {}

  static LeftOut setWaits(Piece piece, List<Piece> others) {
    String rest =
        others.stream()
            .map(other -> name(other, piece))
            .distinct()
            .collect(Collectors.joining(" and "));
    return new LeftOut(
        piece.id(),
        Reason.SET_WAITS,
        "It only goes in together with " + rest + ", which must wait.",
        "Make the rest of its set ready, or take it out of the set.");
  }

  private static String name(Piece other, Piece piece) {
    if (other.batch().equals(piece.batch())) {
      return other.part() == Part.LID ? "its lid" : "its pot";
    }
    return "its piece of batch " + other.batch().id();
  }
}
