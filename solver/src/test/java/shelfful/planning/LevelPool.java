package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.geometry.Pose;
import shelfful.kiln.ColumnPlan;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.packing.Packed;
import shelfful.packing.Placed;
import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Piece;

/**
 * The levels that loads of one request and column plan are made of, to choose from anew: each with
 * its column, its shelf places, the height it needs and its contents by lot.
 */
public final class LevelPool {
  private final SketchJudge judge;
  private final PoolShelves shelves;
  private final Map<String, Lot> lotOf = new HashMap<>();
  private final List<PooledLevel> levels = new ArrayList<>();

  private LevelPool(SketchJudge judge) {
    this.judge = judge;
    this.shelves = new PoolShelves(judge);
    for (Lot lot : judge.ware().lots()) {
      for (Piece piece : lot.pieces()) {
        lotOf.put(piece.id(), lot);
      }
    }
  }

  /** The pools of some loads of one request, one for each column plan that any of them uses. */
  public static List<LevelPool> of(LoadRequest request, List<Load> loads) {
    List<LevelPool> pools = new ArrayList<>();
    for (SketchJudge judge : HandLoader.judges(request)) {
      LevelPool pool = new LevelPool(judge);
      loads.stream()
          .filter(load -> load.columnPlanId().equals(judge.stand().plan().id()))
          .forEach(pool::gather);
      if (!pool.levels.isEmpty()) {
        pools.add(pool);
      }
    }
    return pools;
  }

  SketchJudge judge() {
    return judge;
  }

  PoolShelves shelves() {
    return shelves;
  }

  List<PooledLevel> levels() {
    return List.copyOf(levels);
  }

  private void gather(Load load) {
    ColumnPlan plan = judge.stand().plan();
    for (int c = 0; c < plan.columns().size(); c++) {
      String id = plan.columns().get(c).id();
      Map<Integer, List<Layer>> byLevel = new HashMap<>();
      load.layers().stream()
          .filter(layer -> layer.columnId().equals(id))
          .forEach(
              layer -> byLevel.computeIfAbsent(layer.level(), l -> new ArrayList<>()).add(layer));
      for (List<Layer> layers : byLevel.values()) {
        add(level(c, layers));
      }
    }
  }

  /** Of two alike, one that carries posts is kept. */
  private void add(PooledLevel level) {
    if (levels.stream().noneMatch(known -> known.isLike(level) && known.mayCarry())) {
      levels.removeIf(level::isLike);
      levels.add(level);
    }
  }

  private PooledLevel level(int column, List<Layer> layers) {
    List<Spot> spots = judge.stand().spotsOf(column);
    int[][] counts = new int[spots.size()][judge.ware().lots().size()];
    List<Packed> settings = new ArrayList<>();
    long tallest = 0;
    for (Spot spot : spots) {
      int[] here = counts[spot.place()];
      List<Placed> bodies = new ArrayList<>();
      Optional<Layer> layer = layers.stream().filter(l -> l.place() == spot.place()).findFirst();
      for (Placement placement : layer.orElseThrow().placements()) {
        Lot lot = lotOf.get(placement.pieceId());
        here[lot.index()]++;
        bodies.add(new Placed(lot.kind().index(), onShelf(spot.frame(), placement)));
      }
      tallest = Math.max(tallest, judge.tallest(here));
      settings.add(new Packed(bodies, 0));
    }
    boolean mayCarry = mayCarry(spots, layers.get(0).z().micrometres(), counts, settings);
    return new PooledLevel(column, counts, settings, tallest, mayCarry);
  }

  /** Whether every shelf's pieces also stand between the column's own posts, at this height. */
  private boolean mayCarry(List<Spot> spots, long z, int[][] counts, List<Packed> settings) {
    for (Spot spot : spots) {
      LevelStand covered =
          new LevelStand(z, z, judge.stand().ceiling() - z, spot.shelves(), spot.owner().posts());
      int place = spot.place();
      if (!shelves.settle(spot, covered, counts[place], settings.get(place))) {
        return false;
      }
    }
    return true;
  }

  private static Pose onShelf(ShelfFrame frame, Placement placement) {
    double[] at = frame.toShelf(placement.at().x().millimetres(), placement.at().y().millimetres());
    return new Pose(at[0], at[1], placement.turn().radians() - frame.turn());
  }
}
