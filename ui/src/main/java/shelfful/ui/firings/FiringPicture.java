package shelfful.ui.firings;

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
 * The shelves of a firing as they were loaded, from its plan.
 *
 * @param picture of its layers
 * @param lists with the numbers of the sheets
 */
record FiringPicture(LayerPicture picture, LoadLists lists) {

  static FiringPicture of(InspectedLoad load) {
    LengthUnit unit = load.load().request().studio().unit();
    return new FiringPicture(LayerPicture.of(load, unit), LoadLists.of(load, unit));
  }

  Optional<LayerList> layer(String id) {
    return lists.layers().stream().filter(layer -> layer.layerId().equals(id)).findFirst();
  }

  Sheet sheet(String layerId) {
    return picture.layer(layerId, LayerPicture.Marked.NOTHING);
  }

  List<Mark> graded(String layerId, Map<String, Grade> grades, Map<Grade, String> letters) {
    return picture.graded(layerId, grades, letters);
  }

  Optional<PiecesOnSheet> pieces(String layerId) {
    return layer(layerId)
        .flatMap(layer -> sheet(layerId).plan().map(plan -> new PiecesOnSheet(layer, plan)));
  }
}
