package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.packing.Packed;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;

/** A load while single shelves of it are given other contents. */
final class LoadAtHand {
  private final int number;
  private final PlanDesk desk;
  private final SketchJudge judge;
  private State now;

  /** How it is, and how that stands. */
  record State(Sketch sketch, Stacking stacking) {}

  /** A shelf of it. */
  record Berth(LoadAtHand load, Spot spot, int level) {
    /** By lot, what stands there; not to be changed. */
    int[] counts() {
      return load.now.sketch.counts(spot.column(), level, spot.place());
    }

    LevelStand stand() {
      return load.now.stacking.level(spot.column(), level);
    }

    NumberedSpace space(int[] counts) {
      return load.judge.space(spot, stand(), load.judge.tallest(counts));
    }

    /** Whether a lot may stand there beside so many of others, if there is room. */
    boolean mayHold(Lot lot, int[] counts) {
      return !lot.forbidden().contains(load.judge.zone(stand()))
          && !load.judge.apart().clashesOnLayer(lot.index(), counts);
    }
  }

  /**
   * A load at hand.
   *
   * @param number among those at hand
   * @param desk with a load on it that stands
   */
  LoadAtHand(int number, PlanDesk desk) {
    this.number = number;
    this.desk = desk;
    this.judge = desk.judge();
    Sketch sketch = desk.best().copy();
    this.now = new State(sketch, judge.judge(sketch).stacking().orElseThrow());
  }

  int number() {
    return number;
  }

  List<Lot> lots() {
    return judge.ware().lots();
  }

  ShelfAnswers answers() {
    return judge.answers();
  }

  int[] byKind(int[] counts) {
    return judge.byKind(counts);
  }

  List<Berth> berths() {
    List<Berth> berths = new ArrayList<>();
    for (Spot spot : judge.stand().spots()) {
      for (int level = 0; level < now.sketch.levels(spot.column()); level++) {
        berths.add(new Berth(this, spot, level));
      }
    }
    return berths;
  }

  State now() {
    return now;
  }

  void go(State to) {
    now = to;
  }

  /** Leaves the desk with a state of it. */
  void keep(State state) {
    desk.goOnFrom(state.sketch);
  }

  /** With something else on one of its shelves; empty where that cannot stand. */
  Optional<State> with(Berth berth, int[] counts) {
    Sketch changed = now.sketch.copy();
    int column = berth.spot().column();
    int[] there = changed.counts(column, berth.level(), berth.spot().place());
    System.arraycopy(counts, 0, there, 0, there.length);
    if (changed.isEmpty(column, berth.level())) {
      return Optional.empty();
    }
    // Posts are as low as can be, so what is taller or lower than before may move all above it.
    Optional<Stacking> stacking = judge.stack(StackNeeds.of(changed, lots()));
    if (stacking.isEmpty()) {
      return Optional.empty();
    }
    Packed near = judge.packed(berth.spot(), berth.stand(), berth.counts(), null);
    LevelStand level = stacking.get().level(column, berth.level());
    boolean stands =
        judge.packed(berth.spot(), level, counts, near) != null
            && judge.judge(changed).broken() == 0;
    return stands ? Optional.of(new State(changed, stacking.get())) : Optional.empty();
  }
}
