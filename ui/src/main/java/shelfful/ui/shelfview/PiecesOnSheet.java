package shelfful.ui.shelfview;

import java.util.Comparator;
import java.util.Optional;
import shelfful.drawing.LayerList;
import shelfful.drawing.PlanView;
import shelfful.drawing.Spot;

/**
 * The pieces of a layer as they lie on its picture.
 *
 * @param layer what stands on it
 * @param view how places of the chamber lie on the picture
 */
public record PiecesOnSheet(LayerList layer, PlanView view) {

  /** Where a piece lies; empty when it does not stand on the layer. */
  public Optional<ShelfView.Ring> ring(String pieceId) {
    return layer.rows().stream().filter(row -> row.holds(pieceId)).findFirst().map(this::ring);
  }

  /** The piece that covers a spot, of a pile the lowest; the nearest where there are several. */
  public Optional<String> at(Spot spot) {
    return layer.rows().stream()
        .filter(row -> distance(row, spot) <= ring(row).radius())
        .min(Comparator.comparingDouble(row -> distance(row, spot)))
        .map(LayerList.Row::pieceId);
  }

  private double distance(LayerList.Row row, Spot spot) {
    Spot at = ring(row).at();
    return Math.hypot(at.x() - spot.x(), at.y() - spot.y());
  }

  private ShelfView.Ring ring(LayerList.Row row) {
    return new ShelfView.Ring(view.at(row.at()), view.onPaper(row.across().millimetres()) / 2);
  }
}
