package shelfful.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.ware.Piece;

/** Which layers are worth setting anew for a piece, the likeliest first. */
final class FreedLayers {
  private final WaitingCase one;

  FreedLayers(WaitingCase one) {
    this.one = one;
  }

  /**
   * Sets of pieces to let go, one layer at a time: first the lowest layers that are high enough, of
   * these the ones with the least mass on them, then the higher of the others.
   */
  List<Set<String>> inTurn() {
    Piece piece = one.piece(one.group().pieceIds().get(0));
    long need = one.request().standing(piece).height().micrometres();
    Comparator<Layer> likeliest =
        Comparator.<Layer>comparingLong(layer -> shortOf(layer, need))
            .thenComparingLong(layer -> one.start().figures(layer.id()).mass().grams())
            .thenComparing(Layer::id);
    List<Set<String>> freed = new ArrayList<>();
    one.load().layers().stream()
        .filter(layer -> !layer.placements().isEmpty())
        .sorted(likeliest)
        .limit(one.effort().layers())
        .forEach(layer -> freed.add(pieces(layer)));
    return freed;
  }

  private long shortOf(Layer layer, long need) {
    long clear = one.start().figures(layer.id()).clearHeight().micrometres();
    return Math.max(0, need - clear);
  }

  private static Set<String> pieces(Layer layer) {
    Set<String> ids = new HashSet<>();
    layer.placements().stream().map(Placement::pieceId).forEach(ids::add);
    return ids;
  }
}
