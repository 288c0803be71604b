package shelfful.ui.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.drawing.KilnSide;
import shelfful.drawing.LayerList;
import shelfful.drawing.LayerPicture;
import shelfful.drawing.LoadLists;
import shelfful.drawing.PlanView;
import shelfful.drawing.Printing;
import shelfful.drawing.Sheet;
import shelfful.drawing.Spot;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.JudgedLoad;
import shelfful.inspect.LayerFigures;
import shelfful.inspect.Neighbours;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.ui.shelfview.PiecesOnSheet;
import shelfful.ui.shelfview.ShelfView;

/**
 * A plan that the judge has seen with all that is shown of it, made together so that no part is
 * older than another.
 *
 * @param plan with its pins and locks
 * @param judged what the judge says of it
 * @param sight how it is looked at
 * @param side the kiln from the side
 * @param lists what is in and what waits
 * @param picture of its layers
 * @param sheets the picture of each layer by its id
 * @param neighbours what each piece comes closest to
 */
record ShownLoad(
    WorkPlan plan,
    JudgedLoad judged,
    Sight sight,
    KilnSide side,
    LoadLists lists,
    LayerPicture picture,
    Map<String, Sheet> sheets,
    Neighbours neighbours) {
  private static final double SIDE_HEIGHT = 160;

  /** Draws a plan; takes as long as drawing takes, so not on the screen's thread. */
  static ShownLoad of(WorkPlan plan, JudgedLoad judged, Sight sight) {
    LengthUnit unit = sight.unitFor(judged.load());
    LayerPicture picture = LayerPicture.of(judged, unit);
    Map<String, Sheet> sheets = new LinkedHashMap<>();
    LayerPicture.Marked marked = new LayerPicture.Marked(Optional.empty(), plan.pinned());
    picture.layerIds().forEach(id -> sheets.put(id, picture.layer(id, marked)));
    return new ShownLoad(
        plan,
        judged,
        sight,
        KilnSide.of(judged, SIDE_HEIGHT),
        LoadLists.of(judged, unit),
        picture,
        sheets,
        Neighbours.of(judged.load()));
  }

  /** The load if it breaks no rule, to be saved and printed. */
  Optional<InspectedLoad> inspected() {
    return judged instanceof InspectedLoad inspected ? Optional.of(inspected) : Optional.empty();
  }

  /** Every figure is written in. */
  LengthUnit unit() {
    return sight.unitFor(judged.load());
  }

  /** How its sheets are printed. */
  Printing printing() {
    return Printing.plain(sight.paper(), unit());
  }

  /** The least distance between two pieces anywhere in the load. */
  Optional<Length> smallestGap() {
    return judged.figures().stream()
        .map(LayerFigures::smallestGap)
        .flatMap(Optional::stream)
        .min(Length::compareTo);
  }

  Optional<LayerList> layer(String id) {
    return lists.layers().stream().filter(layer -> layer.layerId().equals(id)).findFirst();
  }

  /** The layer that a piece stands on. */
  Optional<String> layerOf(String pieceId) {
    return plan.layerOf(pieceId).map(layer -> layer.id());
  }

  /** What a piece is called on its layer: number and form. */
  Optional<String> nameOf(String pieceId) {
    return rowOf(pieceId).map(row -> row.number() + " " + row.form());
  }

  /** The number of a piece on its layer. */
  Optional<String> numberOf(String pieceId) {
    return rowOf(pieceId).map(row -> Integer.toString(row.number()));
  }

  private Optional<LayerList.Row> rowOf(String pieceId) {
    return lists.layers().stream()
        .flatMap(layer -> layer.rows().stream())
        .filter(row -> row.holds(pieceId))
        .findFirst();
  }

  /** The picture of a layer; none for a layer that the load does not have. */
  List<Sheet> sheets(String layerId) {
    return Optional.ofNullable(sheets.get(layerId)).stream().toList();
  }

  /** The same without a piece that is in the hand. */
  List<Sheet> without(String layerId, String pieceId) {
    return sheets.containsKey(layerId)
        ? List.of(
            picture.layer(layerId, new LayerPicture.Marked(Optional.of(pieceId), plan.pinned())))
        : List.of();
  }

  /** Where a piece lies on its layer's sheet. */
  Optional<ShelfView.Ring> ring(String layerId, String pieceId) {
    return pieces(layerId).flatMap(pieces -> pieces.ring(pieceId));
  }

  /** The piece that covers a spot on its layer's sheet, the nearest where there are several. */
  Optional<String> pieceAt(String layerId, Spot spot) {
    return pieces(layerId).flatMap(pieces -> pieces.at(spot));
  }

  private Optional<PiecesOnSheet> pieces(String layerId) {
    return layer(layerId)
        .flatMap(layer -> view(layerId).map(plan -> new PiecesOnSheet(layer, plan)));
  }

  /** How places of the chamber lie on a layer's sheet. */
  Optional<PlanView> view(String layerId) {
    return sheets(layerId).stream().findFirst().flatMap(Sheet::plan);
  }
}
