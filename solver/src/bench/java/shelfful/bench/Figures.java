package shelfful.bench;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Set;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.ware.Batch;
import shelfful.ware.Piece;

/**
 * What counts of an inspected load.
 *
 * @param mustGoWaiting must-go pieces that are not in
 * @param worth points of the pieces that are in: 100 each times priority, twice that when due soon
 * @param pieces that are in
 * @param layers shelves used
 */
record Figures(int mustGoWaiting, long worth, int pieces, int layers)
    implements Comparable<Figures> {
  private static final Comparator<Figures> BEST_LAST =
      Comparator.comparingInt((Figures figures) -> -figures.mustGoWaiting)
          .thenComparingLong(Figures::worth);
  private static final long POINTS = 100;

  /**
   * The figures of a load that passes the inspector.
   *
   * @throws IllegalStateException when it does not, with every finding
   */
  static Figures of(Load load, String whose) {
    if (new Inspector().inspect(load) instanceof Inspection.Failed failed) {
      throw new IllegalStateException(whose + " breaks the rules: " + failed.findings());
    }
    return counted(load);
  }

  /** The figures of a load that is inspected elsewhere. */
  static Figures counted(Load load) {
    Set<String> in = new HashSet<>();
    load.layers().forEach(layer -> layer.placements().forEach(p -> in.add(p.pieceId())));
    int mustGo = 0;
    long worth = 0;
    for (Piece piece : load.request().pieces()) {
      boolean isIn = in.contains(piece.id());
      mustGo += piece.batch().mustGo() && !isIn ? 1 : 0;
      worth += isIn ? worth(load.request(), piece.batch()) : 0;
    }
    return new Figures(mustGo, worth, in.size(), load.layers().size());
  }

  private static long worth(LoadRequest request, Batch batch) {
    long points = POINTS * batch.priority();
    if (request.day().isEmpty() || batch.due().isEmpty()) {
      return points;
    }
    LocalDate soon = request.day().get().plusDays(request.studio().rules().dueSoonDays());
    return batch.due().get().isAfter(soon) ? points : 2 * points;
  }

  /** Must-go pieces first, then worth; the rest does not make a load better here. */
  @Override
  public int compareTo(Figures other) {
    return BEST_LAST.compare(this, other);
  }
}
