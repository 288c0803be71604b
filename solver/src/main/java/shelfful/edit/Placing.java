package shelfful.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;

/** Loads that differ from another in where one piece stands. */
final class Placing {
  private Placing() {}

  /** The piece elsewhere on its own layer, in its old turn of the list. */
  static Load moved(Load load, Placement place) {
    return standing(
        load,
        layer ->
            layer.placements().stream()
                .map(one -> one.pieceId().equals(place.pieceId()) ? place : one)
                .toList());
  }

  /** The piece on a layer, and nowhere else. */
  static Load put(Load load, String layerId, Placement place) {
    Load without = withoutWaiting(lifted(load, place.pieceId()), place.pieceId());
    return standing(
        without, layer -> layer.id().equals(layerId) ? added(layer, place) : layer.placements());
  }

  /** The piece waiting. */
  static Load out(Load load, LeftOut reason) {
    Load lifted = withoutWaiting(lifted(load, reason.pieceId()), reason.pieceId());
    List<LeftOut> waiting = new ArrayList<>(lifted.leftOut());
    waiting.add(reason);
    return new Load(
        lifted.request(), lifted.columnPlanId(), lifted.layers(), lifted.posts(), waiting);
  }

  private static Load lifted(Load load, String pieceId) {
    return standing(
        load,
        layer ->
            layer.placements().stream().filter(one -> !one.pieceId().equals(pieceId)).toList());
  }

  private static Load withoutWaiting(Load load, String pieceId) {
    List<LeftOut> waiting =
        load.leftOut().stream().filter(one -> !one.pieceId().equals(pieceId)).toList();
    return new Load(load.request(), load.columnPlanId(), load.layers(), load.posts(), waiting);
  }

  private static List<Placement> added(Layer layer, Placement place) {
    List<Placement> placements = new ArrayList<>(layer.placements());
    placements.add(place);
    return placements;
  }

  /**
   * What stands on each layer afresh; the same layer object where nothing changes, so that what was
   * made of it may be kept.
   */
  private static Load standing(Load load, Function<Layer, List<Placement>> now) {
    List<Layer> layers =
        load.layers().stream()
            .map(
                layer -> {
                  List<Placement> placements = now.apply(layer);
                  return placements.equals(layer.placements()) ? layer : layer.holding(placements);
                })
            .toList();
    return new Load(load.request(), load.columnPlanId(), layers, load.posts(), load.leftOut());
  }
}
