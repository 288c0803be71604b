package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.Placement;

/**
 * Reads an earlier load, where its shelves lie in pairs at one height, as one with joined shelves.
 */
final class JoinedLoad {
  private JoinedLoad() {}

  /** The load with joined shelves; empty where a shelf has no twin at its height. */
  static Optional<Load> of(JoinedPlan joined, Load load) {
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : load.layers()) {
      Optional<TwinColumns> pair =
          joined.pairs().stream().filter(twins -> twins.holds(LayerPlace.of(layer))).findFirst();
      if (pair.isEmpty()) {
        layers.add(layer);
      } else if (pair.get().isFirst(LayerPlace.of(layer))) {
        Optional<Layer> twin = twin(load, layer, pair.get());
        if (twin.isEmpty()) {
          return Optional.empty();
        }
        layers.add(together(joined, layer, twin.get(), pair.get()));
      } else if (load.layers().stream().noneMatch(other -> isTwin(other, layer, pair.get()))) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new Load(joined.request(), load.columnPlanId(), layers, load.posts(), load.leftOut()));
  }

  private static Optional<Layer> twin(Load load, Layer layer, TwinColumns pair) {
    return load.layers().stream().filter(other -> isTwin(layer, other, pair)).findFirst();
  }

  /** Whether the second lies beside the first at its height. */
  private static boolean isTwin(Layer first, Layer second, TwinColumns pair) {
    return pair.isFirst(LayerPlace.of(first))
        && pair.holds(LayerPlace.of(second))
        && !pair.isFirst(LayerPlace.of(second))
        && first.level() == second.level()
        && first.z().equals(second.z())
        && first.shelfId().equals(second.shelfId())
        && pair.shelves().stream().anyMatch(shelf -> shelf.id().equals(first.shelfId()));
  }

  private static Layer together(JoinedPlan joined, Layer first, Layer second, TwinColumns pair) {
    List<Placement> all = new ArrayList<>(first.placements());
    all.addAll(second.placements());
    return new Layer(
        first.id(),
        pair.id(),
        first.level(),
        0,
        joined.whole(pair.id(), first.shelfId()),
        first.z(),
        all);
  }
}
