package shelfful.planning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.optaplanner.core.api.score.stream.uni.UniConstraintCollector;

/**
 * How many of each lot stand in each slot: the whole decision, as a value.
 *
 * @param counts by slot, then by lot index; no zero counts
 */
record SlotCounts(Map<LayerSlot, Map<Integer, Integer>> counts) {

  static SlotCounts of(List<PieceChoice> pieces) {
    Map<LayerSlot, Map<Integer, Integer>> counts = new HashMap<>();
    for (PieceChoice piece : pieces) {
      if (piece.isIn()) {
        change(counts, piece.getSlot(), piece.lot().index(), 1);
      }
    }
    return new SlotCounts(counts);
  }

  private static void change(
      Map<LayerSlot, Map<Integer, Integer>> counts, LayerSlot slot, int lot, int by) {
    Map<Integer, Integer> lots = counts.computeIfAbsent(slot, key -> new HashMap<>());
    lots.merge(lot, by, (a, b) -> a + b == 0 ? null : Integer.valueOf(a + b));
    if (lots.isEmpty()) {
      counts.remove(slot);
    }
  }

  /**
   * As a sketch, without the levels that are empty.
   *
   * @param lots by index
   * @param sketch the levels that are held, nothing on them; written into
   */
  Sketch sketch(Stand stand, List<Lot> lots, Sketch sketch) {
    for (Map.Entry<LayerSlot, Map<Integer, Integer>> entry : counts.entrySet()) {
      LayerSlot slot = entry.getKey();
      int places = stand.column(slot.column()).places().size();
      while (sketch.levels(slot.column()) <= slot.level()) {
        sketch.insertLevel(slot.column(), sketch.levels(slot.column()), places);
      }
      int[] onShelf = sketch.counts(slot.column(), slot.level(), slot.place());
      if (slot.tower() == LayerSlot.ALONE) {
        entry.getValue().forEach((lot, count) -> onShelf[lot] = count);
      } else {
        int pieces = entry.getValue().values().stream().mapToInt(Integer::intValue).sum();
        onShelf[slot.tower()] = pieces / lots.get(slot.tower()).tower().orElseThrow().size();
      }
    }
    sketch.dropEmptyLevels();
    return sketch;
  }

  /** Counts pieces up and down as they move. */
  static final class Collector
      implements UniConstraintCollector<
          PieceChoice, Map<LayerSlot, Map<Integer, Integer>>, SlotCounts> {
    @Override
    public Supplier<Map<LayerSlot, Map<Integer, Integer>>> supplier() {
      return HashMap::new;
    }

    @Override
    public BiFunction<Map<LayerSlot, Map<Integer, Integer>>, PieceChoice, Runnable> accumulator() {
      return (running, piece) -> {
        LayerSlot slot = piece.getSlot();
        int lot = piece.lot().index();
        change(running, slot, lot, 1);
        return () -> change(running, slot, lot, -1);
      };
    }

    @Override
    public Function<Map<LayerSlot, Map<Integer, Integer>>, SlotCounts> finisher() {
      return running -> {
        Map<LayerSlot, Map<Integer, Integer>> copy = new HashMap<>();
        running.forEach((slot, lots) -> copy.put(slot, Map.copyOf(lots)));
        return new SlotCounts(copy);
      };
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Collector;
    }

    @Override
    public int hashCode() {
      return Collector.class.hashCode();
    }
  }
}
