package shelfful.planning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.measure.Point;
import shelfful.packing.BodyKind;
import shelfful.packing.Placed;
import shelfful.packing.ShelfSpace;
import shelfful.packing.Spare;
import shelfful.planning.Stacking.LevelStand;

/**
 * Keeps posts and keep-outs clear of what stays, and what stays out of zones its glaze forbids: a
 * level that holds some comes to lie only where it can stand.
 */
final class Foothold implements Footing {
  /** Kept ware stands on whole micrometres and need not keep the margin that covers for them. */
  static final double LEAST_SPARE = -Margin.FOR_ROUNDING;

  private final Stand stand;
  private final ReadyWare ware;
  private final Staying staying;
  private final ShelfSpaces spaces;
  private final Map<Asked, Boolean> known = new HashMap<>();

  private record Asked(LayerSlot slot, List<Point> posts, long z) {}

  Foothold(Stand stand, ReadyWare ware, Staying staying, ShelfSpaces spaces) {
    this.stand = stand;
    this.ware = ware;
    this.staying = staying;
    this.spaces = spaces;
    ware.lots().stream().filter(Lot::isKept).forEach(this::clearBeside);
  }

  /** What stands over the border of its shelf is in the way on the shelves beside. */
  private void clearBeside(Lot lot) {
    LayerSlot slot = staying.slot(lot);
    Spot spot = stand.spotsOf(slot.column()).get(slot.place());
    ShelfSpace within = new ShelfSpace(spaces.rooms(spot), List.of());
    for (Placed body : staying.bodies(lot.index())) {
      if (Spare.inRooms(within, lot.kind().body(), body.pose()) < LEAST_SPARE) {
        spaces.clear(spot, body, lot.kind().body());
      }
    }
  }

  @Override
  public boolean allows(int column, int level, LevelStand at) {
    for (Spot spot : stand.spotsOf(column)) {
      List<Integer> lots = staying.lotsOn(column, level, spot.place());
      boolean forbidden =
          at.room() > 0
              && lots.stream()
                  .anyMatch(lot -> ware.lots().get(lot).forbidden().contains(Zones.of(stand, at)));
      if (forbidden || !lots.isEmpty() && !stands(spot, level, at, lots)) {
        return false;
      }
    }
    return true;
  }

  private boolean stands(Spot spot, int level, LevelStand at, List<Integer> lots) {
    LayerSlot slot = new LayerSlot(spot.column(), level, spot.place());
    Asked asked = new Asked(slot, at.postsOn(), at.z());
    Boolean clear = known.get(asked);
    if (clear == null) {
      long tallest = lots.stream().mapToLong(lot -> ware.lots().get(lot).height()).max().orElse(0);
      clear = isClear(spaces.forKept(spot, at.postsOn(), at.z(), tallest), lots);
      known.put(asked, clear);
    }
    return clear;
  }

  private boolean isClear(ShelfSpace space, List<Integer> lots) {
    for (int lot : lots) {
      BodyKind kind = ware.lots().get(lot).kind().body();
      for (Placed body : staying.bodies(lot)) {
        if (Spare.fromObstacles(space, kind, body.pose()) < LEAST_SPARE) {
          return false;
        }
      }
    }
    return true;
  }
}
