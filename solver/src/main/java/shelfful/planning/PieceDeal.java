package shelfful.planning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Point;
import shelfful.ware.Piece;

/**
 * Deals single pieces out to bodies of their kind: a piece that finds a body where it stood in an
 * earlier load stays there, the others come in the order of their numbers.
 */
final class PieceDeal {
  private final ReadyWare ware;
  private final Map<Foot, Piece> stood = new HashMap<>();
  private final List<Deque<Piece>> waiting = new ArrayList<>();

  /** A place where a piece stood. */
  private record Foot(LayerPlace layer, Point at) {}

  /** One shelf's content; a body without a piece yet has none. */
  static final class Shelf {
    private final LayerPlace layer;
    private final int[] counts;
    private final List<Integer> kinds;
    private final List<Point> at;
    private final Piece[] pieces;

    /**
     * A shelf to be dealt to.
     *
     * @param counts by lot, kept lots left out
     * @param kinds of its bodies
     * @param at where they stand, chamber frame
     */
    Shelf(LayerPlace layer, int[] counts, List<Integer> kinds, List<Point> at) {
      this.layer = layer;
      this.counts = counts.clone();
      this.kinds = kinds;
      this.at = at;
      this.pieces = new Piece[kinds.size()];
    }

    Piece piece(int body) {
      return pieces[body];
    }
  }

  PieceDeal(ReadyWare ware, Optional<Load> earlier) {
    this.ware = ware;
    Map<String, Piece> byId = new HashMap<>();
    for (Lot lot : ware.lots()) {
      lot.pieces().forEach(piece -> byId.put(piece.id(), piece));
      waiting.add(new ArrayDeque<>(lot.isKept() ? List.of() : lot.pieces()));
    }
    for (Layer layer : earlier.map(Load::layers).orElse(List.of())) {
      for (Placement one : layer.placements()) {
        if (byId.containsKey(one.pieceId())) {
          stood.put(new Foot(LayerPlace.of(layer), one.at()), byId.get(one.pieceId()));
        }
      }
    }
  }

  /** Gives every body of all shelves its piece. */
  void deal(List<Shelf> shelves) {
    if (!stood.isEmpty()) {
      Set<Piece> staying = new HashSet<>();
      shelves.forEach(shelf -> leave(shelf, staying));
      waiting.forEach(lot -> lot.removeAll(staying));
    }
    shelves.forEach(this::fill);
  }

  /** What waits when all is dealt, by lot. */
  List<Deque<Piece>> remaining() {
    return waiting;
  }

  private void leave(Shelf shelf, Set<Piece> staying) {
    for (int body = 0; body < shelf.pieces.length; body++) {
      Piece piece = stood.get(new Foot(shelf.layer, shelf.at.get(body)));
      for (Lot lot : ware.lots()) {
        boolean fits =
            piece != null
                && shelf.counts[lot.index()] > 0
                && lot.kind().index() == shelf.kinds.get(body)
                && lot.pieces().contains(piece);
        if (fits && staying.add(piece)) {
          shelf.pieces[body] = piece;
          shelf.counts[lot.index()]--;
        }
      }
    }
  }

  private void fill(Shelf shelf) {
    List<Deque<Piece>> byKind = new ArrayList<>();
    ware.kinds().forEach(kind -> byKind.add(new ArrayDeque<>()));
    for (Lot lot : ware.lots()) {
      for (int i = 0; i < shelf.counts[lot.index()]; i++) {
        byKind.get(lot.kind().index()).add(waiting.get(lot.index()).remove());
      }
    }
    for (int body = 0; body < shelf.pieces.length; body++) {
      if (shelf.pieces[body] == null) {
        shelf.pieces[body] = byKind.get(shelf.kinds.get(body)).remove();
      }
    }
  }
}
