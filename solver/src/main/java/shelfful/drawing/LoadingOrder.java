package shelfful.drawing;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.load.Layer;

/**
 * The order layers are loaded in: columns on the floor before those that stand on them, and side by
 * side columns level by level, so that both grow together.
 */
final class LoadingOrder {
  private final Map<String, Integer> storeys = new HashMap<>();
  private final List<String> columnIds;

  LoadingOrder(ColumnPlan plan) {
    columnIds = plan.columns().stream().map(Column::id).toList();
    for (Column column : plan.columns()) {
      int storey =
          column.standsOn().stream().mapToInt(below -> storeys.get(below) + 1).max().orElse(0);
      storeys.put(column.id(), storey);
    }
  }

  List<Layer> sorted(List<Layer> layers) {
    return layers.stream()
        .sorted(
            Comparator.comparingInt((Layer layer) -> storeys.get(layer.columnId()))
                .thenComparingInt(Layer::level)
                .thenComparingInt(layer -> columnIds.indexOf(layer.columnId()))
                .thenComparingInt(Layer::place)
                .thenComparing(Layer::id))
        .toList();
  }
}
