package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import shelfful.drawing.KilnSide;
import shelfful.drawing.LayerList;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.LoadLists;
import shelfful.drawing.PlanView;
import shelfful.drawing.Sheet;
import shelfful.drawing.Spot;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;
import shelfful.ui.shelfview.ShelfView;

/**
 * An inspected load with all that is shown of it, made together so that no part is older than
 * another.
 *
 * @param load itself
 * @param drawing its sheets
 * @param side the kiln from the side
 * @param lists what is in and what waits
 */
record ShownLoad(InspectedLoad load, LoadDrawing drawing, KilnSide side, LoadLists lists) {
  private static final double SIDE_HEIGHT = 160;

  /** Draws a load; takes as long as drawing takes, so not on the screen's thread. */
  static ShownLoad of(InspectedLoad load, Sight sight) {
    LengthUnit unit = sight.unitFor(load);
    return new ShownLoad(
        load,
        LoadDrawing.of(load, sight.paper(), unit),
        KilnSide.of(load, SIDE_HEIGHT),
        LoadLists.of(load, unit));
  }

  Optional<LayerList> layer(String id) {
    return lists.layers().stream().filter(layer -> layer.layerId().equals(id)).findFirst();
  }

  /** The sheets of a layer, its plan first. */
  List<Sheet> sheets(String layerId) {
    return drawing.sheets().stream().filter(sheet -> sheet.layerIds().contains(layerId)).toList();
  }

  /** Where a piece lies on its layer's sheet. */
  Optional<ShelfView.Ring> ring(String layerId, String pieceId) {
    return layer(layerId).stream()
        .flatMap(layer -> layer.rows().stream())
        .filter(row -> row.pieceId().equals(pieceId))
        .findFirst()
        .flatMap(row -> plan(layerId).map(plan -> ring(plan, row)));
  }

  /** The piece that covers a spot on its layer's sheet, the nearest where there are several. */
  Optional<String> pieceAt(String layerId, Spot spot) {
    Optional<PlanView> plan = plan(layerId);
    Optional<LayerList> layer = layer(layerId);
    if (plan.isEmpty() || layer.isEmpty()) {
      return Optional.empty();
    }
    String nearest = "";
    double shortest = Double.POSITIVE_INFINITY;
    for (LayerList.Row row : layer.get().rows()) {
      ShelfView.Ring ring = ring(plan.get(), row);
      double distance = Math.hypot(ring.at().x() - spot.x(), ring.at().y() - spot.y());
      if (distance <= ring.radius() && distance < shortest) {
        shortest = distance;
        nearest = row.pieceId();
      }
    }
    return Optional.of(nearest).filter(id -> !id.isEmpty());
  }

  private Optional<PlanView> plan(String layerId) {
    return sheets(layerId).stream().findFirst().flatMap(Sheet::plan);
  }

  private static ShelfView.Ring ring(PlanView plan, LayerList.Row row) {
    return new ShelfView.Ring(plan.at(row.at()), plan.onPaper(row.across().millimetres()) / 2);
  }
}
