package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.geometry.Pose;
import shelfful.load.KeptSetting;
import shelfful.load.PinnedPiece;
import shelfful.packing.Placed;

/** What stays where it is, as a column plan and its ready ware see it. */
final class Staying {
  private final Stand stand;
  private final ReadyWare ware;
  private final LockedStack locked;
  private final Held held;
  private final boolean nothing;
  private final Map<String, PinnedPiece> pieces = new HashMap<>();
  private final Map<LayerSlot, List<Integer>> lotsOn = new HashMap<>();
  private final Map<Integer, List<Placed>> bodies = new HashMap<>();

  Staying(Stand stand, ReadyWare ware) {
    this.stand = stand;
    this.ware = ware;
    this.locked = LockedStack.of(stand);
    this.held = Held.nothing(stand.columns(), ware.lots().size());
    stand
        .request()
        .kept()
        .map(KeptSetting::standing)
        .orElse(List.of())
        .forEach(pin -> pieces.put(pin.pieceId(), pin));
    for (int c = 0; c < stand.columns(); c++) {
      held.leastLevels()[c] = locked.levels(c);
    }
    ware.lots().stream().filter(Lot::isKept).forEach(this::keep);
    this.nothing = !held.isAnything();
  }

  private void keep(Lot lot) {
    LayerSlot slot = slot(lot);
    Spot spot = stand.spotsOf(slot.column()).get(slot.place());
    held.kept()[lot.index()] = true;
    held.leastLevels()[slot.column()] =
        Math.max(held.leastLevels()[slot.column()], slot.level() + 1);
    lotsOn.computeIfAbsent(slot, key -> new ArrayList<>()).add(lot.index());
    bodies.put(
        lot.index(),
        lot.pieces().stream()
            .map(piece -> pieces.get(piece.id()))
            .map(pin -> new Placed(lot.kind().index(), pose(spot, pin)))
            .toList());
  }

  private static Pose pose(Spot spot, PinnedPiece pin) {
    double x = pin.at().x().millimetres();
    double y = pin.at().y().millimetres();
    return spot.frame().toShelf(new Pose(x, y, pin.turn().radians()));
  }

  boolean isNothing() {
    return nothing;
  }

  LockedStack locked() {
    return locked;
  }

  /** Where a kept lot stands. */
  LayerSlot slot(Lot lot) {
    return stand.slot(pieces.get(lot.pieces().get(0).id()).layer());
  }

  /** Where a kept piece stands. */
  PinnedPiece pin(String pieceId) {
    return pieces.get(pieceId);
  }

  /** The bodies of a kept lot where they stand, in the frame of their shelf. */
  List<Placed> bodies(int lot) {
    return bodies.get(lot);
  }

  /** The kept lots on one shelf. */
  List<Integer> lotsOn(int column, int level, int place) {
    return lotsOn.getOrDefault(new LayerSlot(column, level, place), List.of());
  }

  /** Those of some counts that are kept. */
  List<Integer> keptOf(int[] lotCounts) {
    List<Integer> kept = new ArrayList<>();
    for (int lot = 0; lot < lotCounts.length; lot++) {
      if (lotCounts[lot] > 0 && held.kept()[lot]) {
        kept.add(lot);
      }
    }
    return kept;
  }

  /** A sketch of the levels that are held, with nothing on them. */
  Sketch levels() {
    Sketch sketch = new Sketch(held);
    for (int c = 0; c < stand.columns(); c++) {
      for (int l = 0; l < held.leastLevels()[c]; l++) {
        sketch.insertLevel(c, l, stand.spotsOf(c).size());
      }
    }
    return sketch;
  }

  /** A sketch of what stays and nothing else. */
  Sketch bare() {
    Sketch sketch = levels();
    for (Lot lot : ware.lots()) {
      if (lot.isKept()) {
        LayerSlot slot = slot(lot);
        sketch.counts(slot.column(), slot.level(), slot.place())[lot.index()] = lot.size();
      }
    }
    return sketch;
  }
}
