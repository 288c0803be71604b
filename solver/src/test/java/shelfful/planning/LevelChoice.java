package shelfful.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.load.Load;
import shelfful.packing.Packed;
import shelfful.planning.Stacking.LevelStand;

/**
 * Levels chosen from a pool, to be stacked into a load. Which order they stand in is not part of
 * the choice: some are tried, column by column, until one keeps every rule.
 *
 * @param pool they are from
 * @param levels chosen, in any order; one may come several times
 * @param placed how many of each lot go in: no more than the levels hold; the rest is left off
 */
record LevelChoice(LevelPool pool, List<PooledLevel> levels, int[] placed) {
  private static final int ORDERS = 100;

  /** A load and how good it is. */
  record Stacked(Load load, Merit merit) {}

  /** The load, or empty when no order was found that keeps every rule. */
  Optional<Stacked> stacked() {
    Random random = new Random(1);
    List<List<PooledLevel>> order = byColumn();
    for (int i = 0; i < ORDERS; i++) {
      List<PooledLevel> kept = new ArrayList<>();
      Sketch sketch = sketch(order, kept);
      BitSet wrong = wrong(sketch, kept);
      if (wrong.isEmpty() && pool.judge().judge(sketch).broken() == 0) {
        LoadComposer composer =
            new LoadComposer(pool.judge(), (space, kinds, found) -> found, Optional.empty());
        return Optional.of(new Stacked(composer.compose(sketch), Merit.of(sketch, pool.judge())));
      }
      if (wrong.isEmpty()) {
        wrong.set(0, order.size());
      }
      wrong.stream().forEach(column -> Collections.shuffle(order.get(column), random));
    }
    return Optional.empty();
  }

  private List<List<PooledLevel>> byColumn() {
    List<List<PooledLevel>> columns = new ArrayList<>();
    for (int c = 0; c < pool.judge().stand().columns(); c++) {
      int column = c;
      columns.add(
          new ArrayList<>(levels.stream().filter(level -> level.column() == column).toList()));
    }
    return columns;
  }

  /** The levels as they are to stand, what is left off taken from the last, empty ones left out. */
  private Sketch sketch(List<List<PooledLevel>> order, List<PooledLevel> kept) {
    Sketch sketch = new Sketch(pool.judge().stand().columns(), placed.length);
    int[] left = placed.clone();
    for (PooledLevel level : order.stream().flatMap(List::stream).toList()) {
      int position = sketch.levels(level.column());
      sketch.insertLevel(level.column(), position, level.counts().length);
      for (int place = 0; place < level.counts().length; place++) {
        int[] counts = sketch.counts(level.column(), position, place);
        for (int lot = 0; lot < placed.length; lot++) {
          counts[lot] = Math.min(left[lot], level.counts()[place][lot]);
          left[lot] -= counts[lot];
        }
      }
      if (sketch.isEmpty(level.column(), position)) {
        sketch.removeLevel(level.column(), position);
      } else {
        kept.add(level);
      }
    }
    return sketch;
  }

  /** The columns whose order does not do: a shelf cannot be settled, or a zone is forbidden. */
  private BitSet wrong(Sketch sketch, List<PooledLevel> kept) {
    SketchJudge judge = pool.judge();
    BitSet wrong = new BitSet();
    Optional<Stacking> stacking = judge.stack(StackNeeds.of(sketch, judge.ware().lots()));
    if (stacking.isEmpty()) {
      wrong.set(0, sketch.columns());
      return wrong;
    }
    for (Spot spot : judge.stand().spots()) {
      List<PooledLevel> column =
          kept.stream().filter(level -> level.column() == spot.column()).toList();
      for (int l = 0; l < column.size() && !wrong.get(spot.column()); l++) {
        LevelStand at = stacking.get().level(spot.column(), l);
        int[] counts = sketch.counts(spot.column(), l, spot.place());
        Packed stood = column.get(l).settings().get(spot.place());
        if (isForbidden(counts, at) || !pool.shelves().settle(spot, at, counts, stood)) {
          wrong.set(spot.column());
        }
      }
    }
    return wrong;
  }

  private boolean isForbidden(int[] counts, LevelStand at) {
    return pool.judge().ware().lots().stream()
        .anyMatch(
            lot -> counts[lot.index()] > 0 && lot.forbidden().contains(pool.judge().zone(at)));
  }
}
