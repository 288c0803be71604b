package shelfful.planning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.planning.RebuildMove.Change;

/** Slots by column, level and place, and the way from a sketch to the fewest changes of pieces. */
final class SlotTable {
  private final List<LayerSlot> slots = new ArrayList<>();
  private final Map<LayerSlot, LayerSlot> own = new HashMap<>();
  private final int lots;

  SlotTable(Stand stand, int levels, int lots) {
    this.lots = lots;
    for (Spot spot : stand.spots()) {
      for (int l = 0; l < levels; l++) {
        LayerSlot slot = new LayerSlot(spot.column(), l, spot.place());
        slots.add(slot);
        own.put(slot, slot);
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
          open.put(new LayerSlot(c, l, p), wanted.counts(c, l, p).clone());
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

  private List<Deque<LayerSlot>> vacancies(Map<LayerSlot, int[]> open) {
    List<Deque<LayerSlot>> vacancies = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      vacancies.add(new ArrayDeque<>());
    }
    for (LayerSlot slot : slots) {
      int[] counts = open.getOrDefault(slot, new int[0]);
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
