package shelfful.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.geometry.Pose;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.load.Placement;
import shelfful.packing.Packed;
import shelfful.packing.Placed;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;
import shelfful.planning.Tower.Storey;

/**
 * A load of an earlier request, as far as it can be taken over: what still is on the list, on the
 * layer where it stood, and the setting of every shelf whose content is still the same.
 */
final class EarlierLoad {
  private final SketchJudge judge;
  private final Load load;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Set<Packed> settings = Collections.newSetFromMap(new IdentityHashMap<>());

  EarlierLoad(SketchJudge judge, Load load) {
    this.judge = judge;
    this.load = load;
    for (Lot lot : judge.ware().lots()) {
      lot.pieces().forEach(piece -> lots.put(piece.id(), lot));
    }
  }

  /** The settings taken over so far. */
  Set<Packed> settings() {
    return settings;
  }

  /** Its pieces where they stood; levels that nothing is left on are not in it. */
  Sketch sketch() {
    Sketch sketch = judge.staying().bare();
    for (Layer layer : load.layers()) {
      LayerSlot slot = judge.stand().slot(LayerPlace.of(layer));
      while (sketch.levels(slot.column()) <= slot.level()) {
        int places = judge.stand().spotsOf(slot.column()).size();
        sketch.insertLevel(slot.column(), sketch.levels(slot.column()), places);
      }
      int[] counts = sketch.counts(slot.column(), slot.level(), slot.place());
      for (Pile pile : Pile.of(layer.placements())) {
        Lot lot = lot(pile);
        if (lot != null && !lot.isKept()) {
          counts[lot.index()]++;
        }
      }
    }
    teach(sketch);
    sketch.dropEmptyLevels();
    return sketch;
  }

  /**
   * The lot that pieces standing together are of, or null where there is none: then they are left
   * for planning to place anew.
   */
  private Lot lot(Pile pile) {
    if (pile.size() == 1 && pile.lowest().rest().isPlain()) {
      return lots.get(pile.lowest().pieceId());
    }
    return judge.ware().lots().stream()
        .filter(lot -> lot.tower().filter(tower -> isMadeSo(pile, tower)).isPresent())
        .findFirst()
        .orElse(null);
  }

  private boolean isMadeSo(Pile pile, Tower tower) {
    boolean same = pile.size() == tower.size();
    for (int i = 0; same && i < tower.size(); i++) {
      Placement one = pile.pieces().get(i);
      Storey storey = tower.storeys().get(i);
      same =
          lots.get(one.pieceId()) == storey.lot()
              && one.rest().way().equals(storey.way())
              && one.rest().lift().equals(storey.lift())
              && one.rest().upsideDown() == storey.upsideDown();
    }
    return same;
  }

  /** Makes the settings of its shelves known, before any level is dropped. */
  private void teach(Sketch sketch) {
    Optional<Stacking> stacking = judge.stack(StackNeeds.of(sketch, judge.ware().lots()));
    if (stacking.isEmpty()) {
      return;
    }
    for (Layer layer : load.layers()) {
      LayerSlot slot = judge.stand().slot(LayerPlace.of(layer));
      Spot spot = judge.stand().spotsOf(slot.column()).get(slot.place());
      int[] counts = sketch.counts(slot.column(), slot.level(), slot.place());
      LevelStand level = stacking.get().level(slot.column(), slot.level());
      NumberedSpace space = judge.asked(spot, level, counts);
      Optional<Packed> setting = judge.answers().valid(space, bodies(spot, layer));
      setting.ifPresent(
          packed -> {
            judge.answers().learn(space, judge.movable(counts), packed);
            settings.add(packed);
          });
    }
  }

  private List<Placed> bodies(Spot spot, Layer layer) {
    List<Placed> bodies = new ArrayList<>();
    for (Pile pile : Pile.of(layer.placements())) {
      Placement one = pile.lowest();
      Lot lot = lot(pile);
      if (lot != null && !lot.isKept()) {
        double x = one.at().x().millimetres();
        double y = one.at().y().millimetres();
        Pose pose = spot.frame().toShelf(new Pose(x, y, one.turn().radians()));
        boolean turns = lot.kind().body().mayTurn();
        Pose own = turns ? pose : Pose.at(pose.x(), pose.y());
        bodies.add(new Placed(lot.kind().index(), own));
      }
    }
    bodies.sort(Comparator.comparingInt(Placed::kind));
    return bodies;
  }
}
