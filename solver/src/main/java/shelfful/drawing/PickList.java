package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shelfful.load.Layer;

/** What to bring to the kiln, by form and glaze, in the order it is first set. */
record PickList(Setting setting) {
  /**
   * Pieces of one form and glaze.
   *
   * @param first of them to be set
   * @param onLayers how many on which layer, in loading order
   */
  record Kind(SetPiece first, Map<String, Integer> onLayers) {
    int count() {
      return onLayers.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** {@code 9 on L1, 2 on L3}. */
    String places() {
      return onLayers.entrySet().stream()
          .map(entry -> entry.getValue() + " on " + entry.getKey())
          .collect(Collectors.joining(", "));
    }
  }

  List<Kind> kinds() {
    Map<List<Object>, Kind> kinds = new LinkedHashMap<>();
    for (Layer layer : setting.layers()) {
      for (SetPiece piece : setting.on(layer)) {
        List<Object> alike =
            List.of(piece.form().id(), piece.piece().part(), piece.piece().batch().glazeId());
        kinds
            .computeIfAbsent(alike, same -> new Kind(piece, new LinkedHashMap<>()))
            .onLayers()
            .merge(layer.id(), 1, Integer::sum);
      }
    }
    return new ArrayList<>(kinds.values());
  }
}
