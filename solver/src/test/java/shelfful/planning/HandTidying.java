package shelfful.planning;

import java.util.List;
import java.util.OptionalInt;
import shelfful.packing.HandShelf;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;

/**
 * What is left to do when a kiln is loaded by hand: pieces whose set is not complete, or that came
 * to stand in a wrong zone or too near a keep-out because posts changed, come out again.
 */
final class HandTidying {
  private static final int PASSES = 8;

  private final SketchJudge judge;
  private final Sketch sketch;
  private final List<List<List<HandShelf>>> shelves;
  private boolean changed;

  HandTidying(SketchJudge judge, Sketch sketch, List<List<List<HandShelf>>> shelves) {
    this.judge = judge;
    this.sketch = sketch;
    this.shelves = shelves;
  }

  /**
   * Tidies, and tells the judge where everything stands.
   *
   * @throws IllegalStateException when rules are still broken after several rounds
   */
  void tidy() {
    changed = true;
    for (int pass = 0; changed && pass < PASSES; pass++) {
      changed = false;
      dropEmptyLevels();
      keepSetsWhole();
      Stacking stacking = judge.stack(StackNeeds.of(sketch, judge.ware().lots())).orElseThrow();
      for (Spot spot : judge.stand().spots()) {
        for (int l = 0; l < sketch.levels(spot.column()); l++) {
          tidy(spot, l, stacking.level(spot.column(), l));
        }
      }
    }
    if (judge.judge(sketch.copy()).broken() > 0) {
      throw new IllegalStateException("a load by hand breaks rules: " + judge.judge(sketch));
    }
  }

  private void tidy(Spot spot, int level, LevelStand at) {
    int[] counts = sketch.counts(spot.column(), level, spot.place());
    HandShelf shelf = shelves.get(spot.column()).get(level).get(spot.place());
    for (Lot lot : judge.ware().lots()) {
      boolean wrong = lot.forbidden().contains(judge.zone(at));
      while (wrong && counts[lot.index()] > 0) {
        takeOut(lot, counts, shelf);
      }
    }
    NumberedSpace space = judge.space(spot, at, judge.tallest(counts));
    OptionalInt kind = shelf.takeWhatIsInTheWay(space.space());
    while (kind.isPresent()) {
      countOut(kind.getAsInt(), counts);
      kind = shelf.takeWhatIsInTheWay(space.space());
    }
    judge.answers().learn(space, judge.byKind(counts), shelf.packed());
  }

  private void takeOut(Lot lot, int[] counts, HandShelf shelf) {
    counts[lot.index()]--;
    shelf.remove(lot.kind().index());
    changed = true;
  }

  private void countOut(int kind, int[] counts) {
    for (Lot lot : judge.ware().lots()) {
      if (lot.kind().index() == kind && counts[lot.index()] > 0) {
        counts[lot.index()]--;
        changed = true;
        return;
      }
    }
  }

  private void keepSetsWhole() {
    int[] whole = judge.leastOfBundles(sketch.placed());
    for (Lot lot : judge.ware().lots()) {
      int tooMany = sketch.placed()[lot.index()] - whole[lot.bundle()];
      for (int c = sketch.columns() - 1; c >= 0; c--) {
        for (int l = sketch.levels(c) - 1; l >= 0; l--) {
          for (int p = 0; p < sketch.places(c, l); p++) {
            int[] counts = sketch.counts(c, l, p);
            for (; tooMany > 0 && counts[lot.index()] > 0; tooMany--) {
              takeOut(lot, counts, shelves.get(c).get(l).get(p));
            }
          }
        }
      }
    }
  }

  private void dropEmptyLevels() {
    for (int c = 0; c < sketch.columns(); c++) {
      for (int l = sketch.levels(c) - 1; l >= 0; l--) {
        if (sketch.isEmpty(c, l)) {
          sketch.removeLevel(c, l);
          shelves.get(c).remove(l);
        }
      }
    }
  }
}
