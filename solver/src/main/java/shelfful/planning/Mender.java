package shelfful.planning;

import java.util.List;
import java.util.Optional;
import shelfful.planning.Stacking.LevelStand;

/**
 * Takes pieces out of a sketch until it breaks no rule: what no longer fits because posts or
 * keep-outs moved, what came into a forbidden zone, and what lost the rest of its set.
 */
final class Mender {
  private final SketchJudge judge;
  private final Appeal appeal;

  Mender(SketchJudge judge, Appeal appeal) {
    this.judge = judge;
    this.appeal = appeal;
  }

  /** False when the stack cannot be built at all. */
  boolean mend(Sketch sketch) {
    sketch.dropEmptyLevels();
    keepSetsWhole(sketch);
    sketch.dropEmptyLevels();
    for (int pass = 0; pass < 4; pass++) {
      Optional<Stacking> stacking = judge.stack(StackNeeds.of(sketch, judge.ware().lots()));
      if (stacking.isEmpty()) {
        return false;
      }
      boolean changed = false;
      for (Spot spot : judge.stand().spots()) {
        for (int l = 0; l < sketch.levels(spot.column()); l++) {
          int[] counts = sketch.counts(spot.column(), l, spot.place());
          changed |= thin(spot, stacking.get().level(spot.column(), l), counts);
        }
      }
      if (!changed) {
        return true;
      }
      keepSetsWhole(sketch);
      sketch.dropEmptyLevels();
    }
    return judge.judge(sketch.copy()).broken() == 0;
  }

  private boolean thin(Spot spot, LevelStand level, int[] counts) {
    boolean changed = false;
    var zone = judge.zone(level);
    for (Lot lot : judge.ware().lots()) {
      if (counts[lot.index()] > 0 && !lot.isKept() && lot.forbidden().contains(zone)) {
        counts[lot.index()] = 0;
        changed = true;
      }
    }
    while (judge.packed(spot, level, counts, null) == null) {
      counts[appeal.leastAppealing(counts)]--;
      changed = true;
    }
    return changed;
  }

  /** Takes out what is in beyond whole sets, from wherever it stands last. */
  private void keepSetsWhole(Sketch sketch) {
    List<Lot> lots = judge.ware().singles();
    if (judge.ware().bundles() == lots.size()) {
      return;
    }
    int[] placed = sketch.placed();
    int[] pieces = judge.ware().shares().pieces(placed);
    int[] whole = judge.leastOfBundles(placed);
    for (Lot lot : lots) {
      int tooMany = pieces[lot.index()] - whole[lot.bundle()];
      for (Spot spot : judge.stand().spots()) {
        tooMany -= sketch.takeOff(spot, lot.index(), tooMany);
      }
    }
  }
}
