package shelfful.planning;

import java.util.List;
import java.util.stream.LongStream;

/**
 * What a piece of each lot counts when whole loads are chosen, in plain pieces. A plain piece of a
 * list is one of no priority; where ware weighs by its room, as in a week, a tenth of what need not
 * go in weighs no more than a plain piece: so a search is about as bold there.
 */
final class PieceWorth {
  /** A must-go piece is worth many others, yet not so many that nothing else counts. */
  private static final double MUST_GO = 20;

  /** Of a piece of no priority. */
  private static final long POINTS = 100;

  /** The most that a list can ask for: priority 9, and due soon. */
  private static final long MOST_OF_A_LIST = 18 * POINTS;

  private static final int TENTH = 10;

  private final double[] each;

  PieceWorth(List<Lot> lots) {
    long[] points = rising(lots);
    long most = points.length == 0 ? POINTS : points[points.length - 1];
    long plain = most > MOST_OF_A_LIST ? points[points.length / TENTH] : POINTS;
    each = new double[lots.size()];
    for (Lot lot : lots) {
      boolean outweighed = lot.mustGo() && most > MOST_OF_A_LIST;
      long counts = outweighed ? Math.max(lot.worth(), most) : lot.worth();
      each[lot.index()] = (lot.mustGo() ? MUST_GO : 1) * counts / plain;
    }
  }

  /** The worth of every piece that need not go in. */
  private static long[] rising(List<Lot> lots) {
    return lots.stream()
        .filter(lot -> !lot.mustGo())
        .flatMapToLong(lot -> LongStream.generate(lot::worth).limit(lot.size()))
        .sorted()
        .toArray();
  }

  /** Of one piece. */
  double of(Lot lot) {
    return each[lot.index()];
  }
}
