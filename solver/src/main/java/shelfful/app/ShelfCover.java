package shelfful.app;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Outline;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/** How much of the shelves the ware covers, seen from above. Lugs and saw cuts are left out. */
final class ShelfCover {
  private ShelfCover() {}

  /** The share of a load's shelves; empty for a load without any. */
  static OptionalDouble of(Load load) {
    LoadRequest request = load.request();
    Map<String, Piece> pieces = new HashMap<>();
    request.pieces().forEach(piece -> pieces.put(piece.id(), piece));
    double shelves =
        load.layers().stream()
            .flatMap(layer -> request.studio().shelf(layer.shelfId()).stream())
            .mapToDouble(shelf -> shelf.outline().squareMillimetres())
            .sum();
    double ware =
        load.layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .map(Placement::pieceId)
            .mapToDouble(id -> area(request, pieces.get(id)))
            .sum();
    return shelves > 0 ? OptionalDouble.of(ware / shelves) : OptionalDouble.empty();
  }

  private static double area(LoadRequest request, Piece piece) {
    Form form = request.studio().form(piece.batch().formId()).orElseThrow();
    return StandingWare.of(form, piece.part(), piece.batch().stage(), Optional.empty())
        .bands()
        .stream()
        .map(Band::outline)
        .mapToDouble(ShelfCover::area)
        .max()
        .orElse(0);
  }

  private static double area(Outline outline) {
    return Math.PI / 4 * outline.width().millimetres() * outline.depth().millimetres();
  }
}
