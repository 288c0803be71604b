package shelfful.planning;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Brings in what sets in a sketch lack: the lids of pots that are fired beside them, the cups of a
 * tea set. Where there is no room, half of what lacks its mates goes out and it is tried again.
 * Shelves are filled kind by kind, so without this a shelf full of pots would go for want of a lid.
 */
final class MissingMates {
  private final SketchJudge judge;
  private final LayerFiller filler;

  MissingMates(SketchJudge judge, LayerFiller filler) {
    this.judge = judge;
    this.filler = filler;
  }

  /** Sets may be split in the sketch afterwards, when nothing more can be done for them. */
  void bringIn(Sketch sketch) {
    while (judge.setsSplit(sketch.placed()) > 0) {
      sketch.dropEmptyLevels();
      Optional<Stacking> stacking = judge.stack(StackNeeds.of(sketch, judge.ware().lots()));
      if (stacking.isEmpty()) {
        return;
      }
      addMates(sketch, stacking.get());
      if (!halve(sketch)) {
        return;
      }
    }
  }

  private void addMates(Sketch sketch, Stacking stacking) {
    int[] most = mostOfBundles(sketch.placed());
    for (Lot lot : judge.ware().singles()) {
      int[] placed = sketch.placed();
      int[] free = new int[placed.length];
      free[lot.index()] = most[lot.bundle()] - pieces(placed)[lot.index()];
      if (free[lot.index()] > 0) {
        add(sketch, stacking, Pool.just(free, placed), lot.kind().index());
      }
    }
  }

  private void add(Sketch sketch, Stacking stacking, Pool pool, int kind) {
    for (Spot spot : judge.stand().spots()) {
      for (int l = 0; l < sketch.levels(spot.column()); l++) {
        int[] counts = sketch.counts(spot.column(), l, spot.place());
        filler.fill(spot, stacking.level(spot.column(), l), counts, pool, new int[] {kind});
      }
    }
  }

  /** False when nothing more can go out without taking whole sets apart. */
  private boolean halve(Sketch sketch) {
    int[] placed = sketch.placed();
    int[] most = mostOfBundles(placed);
    int[] whole = judge.leastOfBundles(placed);
    boolean changed = false;
    for (Lot lot : judge.ware().singles()) {
      int target = (most[lot.bundle()] + whole[lot.bundle()]) / 2;
      int tooMany = pieces(placed)[lot.index()] - target;
      if (tooMany > 0) {
        changed |= takeOut(sketch, lot.index(), tooMany);
      }
    }
    return changed;
  }

  /** From wherever it stands last; false when none of it may leave. */
  private boolean takeOut(Sketch sketch, int lot, int wanted) {
    int left = wanted;
    List<Spot> spots = judge.stand().spots();
    for (int s = spots.size() - 1; s >= 0; s--) {
      left -= sketch.takeOff(spots.get(s), lot, left);
    }
    return left < wanted;
  }

  /** For each bundle how many of its scarcest lot would make every set whole. */
  private int[] mostOfBundles(int[] placed) {
    int[] most = new int[judge.ware().bundles()];
    Arrays.fill(most, 0);
    for (Lot lot : judge.ware().singles()) {
      most[lot.bundle()] = Math.max(most[lot.bundle()], pieces(placed)[lot.index()]);
    }
    return most;
  }

  private int[] pieces(int[] placed) {
    return judge.ware().shares().pieces(placed);
  }
}
