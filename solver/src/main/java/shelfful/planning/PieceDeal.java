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
import shelfful.load.Pile;
import shelfful.load.Placement;
import shelfful.measure.Point;
import shelfful.planning.Tower.Storey;
import shelfful.ware.Piece;

/**
 * Deals single pieces out to bodies of their kind: a piece, or a whole pile, that finds a body
 * where it stood in an earlier load stays there, the others come in the order of their numbers.
 */
final class PieceDeal {
  private final ReadyWare ware;
  private final Map<Foot, List<Piece>> stood = new HashMap<>();
  private final List<Deque<Piece>> waiting = new ArrayList<>();

  /** A place where a piece stood. */
  private record Foot(LayerPlace layer, Point at) {}

  /**
   * The pieces of one body, the lowest first.
   *
   * @param lot of the body
   */
  record Dealt(Lot lot, List<Piece> pieces) {}

  /** One shelf's content; a body without a piece yet has none. */
  static final class Shelf {
    private final LayerPlace layer;
    private final int[] counts;
    private final List<Integer> kinds;
    private final List<Point> at;
    private final Dealt[] bodies;

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
      this.bodies = new Dealt[kinds.size()];
    }

    Dealt body(int index) {
      return bodies[index];
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
      for (Pile pile : Pile.of(layer.placements())) {
        List<String> ids = pile.pieces().stream().map(Placement::pieceId).toList();
        if (byId.keySet().containsAll(ids)) {
          List<Piece> pieces = ids.stream().map(byId::get).toList();
          stood.put(new Foot(LayerPlace.of(layer), pile.lowest().at()), pieces);
        }
      }
    }
  }

  /** Gives every body of all shelves its pieces. */
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
    for (int body = 0; body < shelf.bodies.length; body++) {
      List<Piece> pieces = stood.get(new Foot(shelf.layer, shelf.at.get(body)));
      for (Lot lot : ware.lots()) {
        boolean fits =
            pieces != null
                && shelf.bodies[body] == null
                && shelf.counts[lot.index()] > 0
                && lot.kind().index() == shelf.kinds.get(body)
                && isOf(lot, pieces)
                && pieces.stream().noneMatch(staying::contains);
        if (fits) {
          staying.addAll(pieces);
          shelf.bodies[body] = new Dealt(lot, pieces);
          shelf.counts[lot.index()]--;
        }
      }
    }
  }

  private static boolean isOf(Lot lot, List<Piece> pieces) {
    if (lot.tower().isEmpty()) {
      return pieces.size() == 1 && lot.pieces().contains(pieces.get(0));
    }
    List<Storey> storeys = lot.tower().get().storeys();
    boolean all = storeys.size() == pieces.size();
    for (int i = 0; all && i < pieces.size(); i++) {
      all = storeys.get(i).lot().pieces().contains(pieces.get(i));
    }
    return all;
  }

  private void fill(Shelf shelf) {
    List<Deque<Dealt>> byKind = new ArrayList<>();
    ware.kinds().forEach(kind -> byKind.add(new ArrayDeque<>()));
    for (Lot lot : ware.lots()) {
      for (int i = 0; i < shelf.counts[lot.index()]; i++) {
        byKind.get(lot.kind().index()).add(next(lot));
      }
    }
    for (int body = 0; body < shelf.bodies.length; body++) {
      if (shelf.bodies[body] == null) {
        shelf.bodies[body] = byKind.get(shelf.kinds.get(body)).remove();
      }
    }
  }

  private Dealt next(Lot lot) {
    List<Piece> pieces = new ArrayList<>();
    if (lot.tower().isEmpty()) {
      pieces.add(waiting.get(lot.index()).remove());
    } else {
      for (Storey storey : lot.tower().get().storeys()) {
        pieces.add(waiting.get(storey.lot().index()).remove());
      }
    }
    return new Dealt(lot, pieces);
  }
}
