package shelfful.planning;

import java.util.List;
import java.util.stream.LongStream;

/**
 * What a piece of each lot counts when whole loads are chosen, in plain pieces: so a search is as
 * bold where ware counts by its room as where nearly all of it counts alike. A plain piece is worth
 * as much as the middle one of all that need not go in.
 */
final class PieceWorth {
  /** A must-go piece is worth many others, yet not so many that nothing else counts. */
  private static final double MUST_GO = 20;

  /** Where all must go in. */
  private static final long POINTS = 100;

  private final double[] each;

  PieceWorth(List<Lot> lots) {
    long[] points = rising(lots);
    long plain = points.length == 0 ? POINTS : Math.max(1, points[points.length / 2]);
    long most = points.length == 0 ? POINTS : points[points.length - 1];
    each = new double[lots.size()];
    for (Lot lot : lots) {
      long counts = lot.mustGo() ? Math.max(lot.worth(), most) : lot.worth();
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
