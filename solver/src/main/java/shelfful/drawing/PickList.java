package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.load.Layer;

/** What to bring to the kiln, by form and glaze, in the order it is first set. */
record PickList(Setting setting) {
  /**
   * Pieces of one form and glaze.
   *
   * @param first of them to be set
   * @param onLayers how many on which layer, in loading order
   * @param how they are set on and in each other, in the order first met; empty where none is
   */
  record Kind(SetPiece first, Map<String, Integer> onLayers, Set<String> how) {
    static Kind of(SetPiece first) {
      return new Kind(first, new LinkedHashMap<>(), new LinkedHashSet<>());
    }

    int count() {
      return onLayers.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** {@code 9 on L1, 2 on L3}. */
    String places() {
      return onLayers.entrySet().stream()
              .map(entry -> entry.getValue() + " on " + entry.getKey())
              .collect(Collectors.joining(", "))
          + (how.isEmpty() ? "" : " – " + String.join("; ", how));
    }
  }

  private static List<Object> alike(SetPiece piece) {
    return List.of(piece.form().id(), piece.piece().part(), piece.piece().batch().glazeId());
  }

  List<Kind> kinds() {
    Map<List<Object>, Kind> kinds = new LinkedHashMap<>();
    for (Layer layer : setting.layers()) {
      for (SetPiece body : setting.on(layer)) {
        for (SetPiece piece : body.all()) {
          Kind kind = kinds.computeIfAbsent(alike(piece), same -> Kind.of(piece));
          kind.onLayers().merge(layer.id(), 1, Integer::sum);
          String how = piece == body ? PileWords.how(body) : PileWords.within(piece, body);
          if (!how.isEmpty()) {
            kind.how().add(how);
          }
        }
      }
    }
    return new ArrayList<>(kinds.values());
  }
}
