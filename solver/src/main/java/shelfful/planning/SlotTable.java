package shelfful.planning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.planning.RebuildMove.Change;

/**
 * Slots by column, level and place, on each shelf alone first and then in every pile there can be;
 * and the way from a sketch to the fewest changes of pieces.
 */
final class SlotTable {
  private static final int[] NOTHING = new int[0];

  private final List<LayerSlot> slots = new ArrayList<>();
  private final Shares shares;
  private final int singles;
  private final int lots;

  SlotTable(Stand stand, int levels, ReadyWare ware) {
    this.shares = ware.shares();
    this.singles = ware.singles().size();
    this.lots = ware.lots().size();
    for (Spot spot : stand.spots()) {
      for (int l = 0; l < levels; l++) {
        LayerSlot slot = new LayerSlot(spot.column(), l, spot.place());
        slots.add(slot);
        for (int tower = singles; tower < lots; tower++) {
          slots.add(slot.in(tower));
        }
      }
    }
  }

  List<LayerSlot> slots() {
    return slots;
  }

  /** The changes that make the pieces stand as a sketch says; pieces that may stay, stay. */
  List<Change> changes(List<PieceChoice> pieces, Sketch wanted) {
    Map<LayerSlot, int[]> open = new HashMap<>();
    for (int c = 0; c < wanted.columns(); c++) {
      for (int l = 0; l < wanted.levels(c); l++) {
        for (int p = 0; p < wanted.places(c, l); p++) {
          open(open, new LayerSlot(c, l, p), wanted.counts(c, l, p));
        }
      }
    }
    List<PieceChoice> movable = new ArrayList<>();
    for (PieceChoice piece : pieces) {
      int[] counts = piece.isIn() ? open.get(piece.getSlot()) : null;
      if (counts != null && counts[piece.lot().index()] > 0) {
        counts[piece.lot().index()]--;
      } else {
        movable.add(piece);
      }
    }
    return place(movable, vacancies(open));
  }

  /** By slot of one shelf, how many pieces of each single lot belong there. */
  private void open(Map<LayerSlot, int[]> open, LayerSlot shelf, int[] bodies) {
    int[] alone = bodies.clone();
    for (int tower = singles; tower < lots; tower++) {
      if (bodies[tower] > 0) {
        int[] pieces = new int[lots];
        shares.use(pieces, tower, -bodies[tower]);
        open.put(shelf.in(tower), pieces);
        alone[tower] = 0;
      }
    }
    open.put(shelf, alone);
  }

  private List<Deque<LayerSlot>> vacancies(Map<LayerSlot, int[]> open) {
    List<Deque<LayerSlot>> vacancies = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      vacancies.add(new ArrayDeque<>());
    }
    for (LayerSlot slot : slots) {
      int[] counts = open.getOrDefault(slot, NOTHING);
      for (int lot = 0; lot < counts.length; lot++) {
        for (int i = 0; i < counts[lot]; i++) {
          vacancies.get(lot).add(slot);
        }
      }
    }
    return vacancies;
  }

  private static List<Change> place(List<PieceChoice> movable, List<Deque<LayerSlot>> vacancies) {
    List<Change> changes = new ArrayList<>();
    for (PieceChoice piece : movable) {
      LayerSlot to = vacancies.get(piece.lot().index()).poll();
      if (to != null || piece.isIn()) {
        changes.add(new Change(piece, to));
      }
    }
    return changes;
  }
}
