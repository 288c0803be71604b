package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shelfful.kiln.KeepOut;
import shelfful.load.Layer;

/**
 * Layers that one sheet does for: over each other in one place of a column, on and under the same
 * posts, as high, with the same ware in the same places and the same keep-outs in the way. Their
 * names and heights over the floor differ and nothing else.
 *
 * @param layers in loading order, at least one
 */
record AlikeLayers(List<Layer> layers) {
  AlikeLayers {
    layers = List.copyOf(layers);
  }

  /** The layers of a load, each in one group; groups in the order of their first layers. */
  static List<AlikeLayers> of(Setting setting) {
    Map<List<Object>, List<Layer>> groups = new LinkedHashMap<>();
    for (Layer layer : setting.layers()) {
      groups.computeIfAbsent(drawn(setting, layer), same -> new ArrayList<>()).add(layer);
    }
    return groups.values().stream().map(AlikeLayers::new).toList();
  }

  /** Everything a sheet shows of a layer but its name and height. */
  private static List<Object> drawn(Setting setting, Layer layer) {
    List<Object> drawn = new ArrayList<>();
    drawn.add(List.of(layer.columnId(), layer.place(), layer.shelfId()));
    drawn.add(setting.clearHeight(layer));
    drawn.add(PostMark.of(setting, setting.under(layer), setting.standingOn(layer)));
    drawn.add(setting.standAlready(layer).size());
    drawn.add(setting.setWith(layer).stream().map(Layer::id).toList());
    for (KeepOut keepOut : setting.inTheWay(layer)) {
      drawn.add(List.of(keepOut.name(), keepOut.from(), keepOut.to(), keepOut.across()));
    }
    for (SetPiece piece : setting.on(layer)) {
      drawn.add(
          List.of(
              piece.number(),
              piece.piece().batch().id(),
              piece.piece().part(),
              piece.placement().at(),
              piece.placement().turn(),
              piece.placement().onCatcher(),
              piece.all().stream().map(one -> one.piece().batch().id()).toList(),
              PileWords.how(piece)));
    }
    return drawn;
  }

  Layer first() {
    return layers.get(0);
  }

  List<String> ids() {
    return layers.stream().map(Layer::id).toList();
  }

  /** {@code L2}, or {@code L2, L4} of two. */
  String names() {
    return String.join(", ", ids());
  }

  /** How often what is on the sheet is built: empty text, or {@code ×2}. */
  String times() {
    return layers.size() == 1 ? "" : "×" + layers.size();
  }
}
