package shelfful.ui.firings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.drawing.LayerList;
import shelfful.drawing.LayerPicture;
import shelfful.drawing.LoadLists;
import shelfful.drawing.Mark;
import shelfful.drawing.Sheet;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;
import shelfful.record.Grade;
import shelfful.ui.shelfview.PiecesOnSheet;

/**
 * The shelves of a firing as they were loaded, from its plan: every sheet is drawn once, however
 * often its pieces are marked.
 *
 * @param picture of its layers
 * @param lists with the numbers of the sheets
 * @param sheets by layer
 */
record FiringPicture(LayerPicture picture, LoadLists lists, Map<String, Sheet> sheets) {

  /** Draws every layer; not to be called on the screen's thread. */
  static FiringPicture of(InspectedLoad load) {
    LengthUnit unit = load.load().request().studio().unit();
    LayerPicture picture = LayerPicture.of(load, unit);
    LoadLists lists = LoadLists.of(load, unit);
    Map<String, Sheet> sheets = new HashMap<>();
    for (LayerList layer : lists.layers()) {
      String id = layer.layerId();
      sheets.put(id, picture.layer(id, LayerPicture.Marked.NOTHING));
    }
    return new FiringPicture(picture, lists, Map.copyOf(sheets));
  }

  Optional<LayerList> layer(String id) {
    return lists.layers().stream().filter(layer -> layer.layerId().equals(id)).findFirst();
  }

  /** The sheet of a layer that the firing has. */
  Sheet sheet(String layerId) {
    return sheets.get(layerId);
  }

  List<Mark> graded(String layerId, Map<String, Grade> grades, Map<Grade, String> letters) {
    return picture.graded(layerId, grades, letters);
  }

  Optional<PiecesOnSheet> pieces(String layerId) {
    return layer(layerId)
        .flatMap(layer -> sheet(layerId).plan().map(plan -> new PiecesOnSheet(layer, plan)));
  }
}
