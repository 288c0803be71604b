package shelfful.edit;

import java.util.ArrayList;
import java.util.List;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;

/** Loads that differ from another in where one piece stands. */
final class Placing {
  private Placing() {}

  /** The piece elsewhere on its own layer, in its old turn of the list. */
  static Load moved(Load load, Placement place) {
    return withLayers(
        load,
        load.layers().stream()
            .map(
                layer ->
                    with(
                        layer,
                        layer.placements().stream()
                            .map(one -> one.pieceId().equals(place.pieceId()) ? place : one)
                            .toList()))
            .toList());
  }

  /** The piece on a layer, and nowhere else. */
  static Load put(Load load, String layerId, Placement place) {
    Load without = withoutWaiting(lifted(load, place.pieceId()), place.pieceId());
    return withLayers(
        without,
        without.layers().stream()
            .map(layer -> layer.id().equals(layerId) ? with(layer, added(layer, place)) : layer)
            .toList());
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
    return withLayers(
        load,
        load.layers().stream()
            .map(
                layer ->
                    with(
                        layer,
                        layer.placements().stream()
                            .filter(one -> !one.pieceId().equals(pieceId))
                            .toList()))
            .toList());
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

  private static Load withLayers(Load load, List<Layer> layers) {
    return new Load(load.request(), load.columnPlanId(), layers, load.posts(), load.leftOut());
  }

  /** The same layer object where nothing changes, so that what was made of it may be kept. */
  private static Layer with(Layer layer, List<Placement> placements) {
    return placements.equals(layer.placements())
        ? layer
        : new Layer(
            layer.id(),
            layer.columnId(),
            layer.level(),
            layer.place(),
            layer.shelfId(),
            layer.z(),
            placements);
  }
}
