package shelfful.planning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.load.Load;
import shelfful.measure.Mass;
import shelfful.packing.BodyKind;
import shelfful.packing.HandDistances;
import shelfful.packing.HandShelf;
import shelfful.packing.ShelfQuestion;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Zone;

/** One kiln being loaded by hand, lots in a given order. */
final class HandStack {
  private final SketchJudge judge;
  private final List<Lot> order;
  private final int[] free;
  private final double[][] gaps;
  private final HandDistances distances;
  private final Sketch sketch;
  private final boolean[] closed;

  /** Column, level, place: the same shape as the sketch. */
  private final List<List<List<HandShelf>>> shelves = new ArrayList<>();

  HandStack(SketchJudge judge, List<Lot> order) {
    this.judge = judge;
    this.order = order;
    this.free = judge.ware().lots().stream().mapToInt(Lot::size).toArray();
    this.gaps = new PairGaps(judge.stand().request()).between(judge.ware().kinds());
    this.sketch = new Sketch(judge.stand().columns(), free.length);
    this.distances = new HandDistances(bodies(), gaps);
    this.closed = new boolean[judge.stand().columns()];
    for (int c = 0; c < closed.length; c++) {
      shelves.add(new ArrayList<>());
    }
  }

  void load() {
    for (int c = lowest(); c >= 0; c = lowest()) {
      closed[c] = !build(c);
    }
    new HandTidying(judge, sketch, shelves).tidy();
  }

  Merit merit() {
    return Merit.of(sketch, judge);
  }

  Load asLoad() {
    return new LoadComposer(judge, (space, kinds, found) -> found, Optional.empty())
        .compose(sketch);
  }

  /** The open column that reaches least high, or −1; a column waits for those it stands on. */
  private int lowest() {
    int found = -1;
    long least = Long.MAX_VALUE;
    for (int c = 0; c < closed.length; c++) {
      if (!closed[c] && mayGrow(c) && reach(c) < least) {
        found = c;
        least = reach(c);
      }
    }
    return found;
  }

  /** Columns that carry others stop at half the chamber's height, and then the others begin. */
  private boolean mayGrow(int column) {
    Stand stand = judge.stand();
    boolean under = !stand.above(column).isEmpty();
    boolean enough = under && reach(column) > stand.ceiling() / 2;
    boolean ready =
        stand.below(column).stream()
            .allMatch(low -> closed[low] || reach(low) > stand.ceiling() / 2);
    return !enough && ready;
  }

  private long reach(int column) {
    int levels = sketch.levels(column);
    if (levels == 0) {
      return 0;
    }
    StackNeeds needs = StackNeeds.of(sketch, judge.ware().lots());
    return judge
        .stack(needs)
        .map(stacking -> stacking.level(column, levels - 1).z())
        .map(z -> z + needs.level(column, levels - 1).tallest())
        .orElse(Long.MAX_VALUE);
  }

  /**
   * Puts one more level on a column; false when none goes on or there is nothing to stand on it.
   */
  private boolean build(int column) {
    StackNeeds needs = StackNeeds.of(sketch, judge.ware().lots());
    int position = sketch.levels(column);
    long[] nothing = new long[judge.stand().spotsOf(column).size()];
    for (Lot lot : order) {
      if (free[lot.index()] > 0) {
        StackNeeds.Level more = new StackNeeds.Level(lot.height(), nothing);
        Optional<Stacking> stacking = judge.stack(needs.with(column, position, more));
        if (stacking.isPresent() && fill(column, stacking.get().level(column, position), lot)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Fills a new level, the leading lot first; there is no level if that does not go on. */
  private boolean fill(int column, LevelStand level, Lot lead) {
    Stand stand = judge.stand();
    long high = Math.min(HandLoader.heightClass(stand, lead.height()), stand.ceiling() - level.z());
    LevelStand covered =
        new LevelStand(
            level.underside(), level.z(), high, level.shelves(), stand.column(column).posts());
    int position = sketch.levels(column);
    sketch.insertLevel(column, position, stand.spotsOf(column).size());
    List<HandShelf> here = new ArrayList<>();
    for (Spot spot : stand.spotsOf(column)) {
      HandShelf shelf = new HandShelf(question(judge.space(spot, covered, high)), distances);
      int[] counts = sketch.counts(column, position, spot.place());
      set(spot, covered, shelf, counts, List.of(lead));
      if (here.isEmpty() && counts[lead.index()] == 0) {
        sketch.removeLevel(column, position);
        return false;
      }
      set(spot, covered, shelf, counts, order);
      here.add(shelf);
    }
    shelves.get(column).add(here);
    return true;
  }

  private ShelfQuestion question(NumberedSpace space) {
    int kinds = judge.ware().kinds().size();
    return new ShelfQuestion(space.space(), bodies(), new int[kinds], gaps);
  }

  private List<BodyKind> bodies() {
    return judge.ware().kinds().stream().map(WareKind::body).toList();
  }

  private void set(Spot spot, LevelStand level, HandShelf shelf, int[] counts, List<Lot> lots) {
    LevelStand onTop =
        new LevelStand(level.underside(), level.z(), level.room(), level.shelves(), List.of());
    Set<Zone> zones = EnumSet.of(judge.zone(level), judge.zone(onTop));
    long grams = grams(counts);
    long limit =
        level.shelves().get(spot.place()).massLimit().map(Mass::grams).orElse(Long.MAX_VALUE);
    for (Lot lot : lots) {
      boolean may =
          lot.height() <= level.room() && zones.stream().noneMatch(lot.forbidden()::contains);
      while (may
          && free[lot.index()] > 0
          && grams + lot.grams() <= limit
          && !judge.apart().clashesOnLayer(lot.index(), counts)
          && !judge.apart().clashesInFiring(lot.index(), sketch.placed())
          && shelf.add(lot.kind().index())) {
        free[lot.index()]--;
        counts[lot.index()]++;
        grams += lot.grams();
      }
    }
  }

  private long grams(int[] counts) {
    return judge.ware().lots().stream().mapToLong(lot -> counts[lot.index()] * lot.grams()).sum();
  }
}
