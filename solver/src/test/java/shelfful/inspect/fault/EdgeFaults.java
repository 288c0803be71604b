package shelfful.inspect.fault;

import java.util.Optional;
import java.util.Random;
import shelfful.load.Load;
import shelfful.measure.Point;

/** Pieces over the edge of their shelf by a twentieth of a millimetre. */
final class EdgeFaults {
  private EdgeFaults() {}

  static Optional<Load> footOverEdge(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(piece -> foot(load, piece, ShelfEdge.outer(outline(load, piece))));
  }

  static Optional<Load> footOverJoint(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .filter(piece -> ShelfEdge.joint(outline(load, piece)).isPresent())
        .findFirst()
        .map(piece -> foot(load, piece, ShelfEdge.joint(outline(load, piece)).orElseThrow()));
  }

  private static Load foot(Load load, PlacedPiece piece, ShelfEdge edge) {
    long clearance = PieceFaults.clearances(load).footToShelfEdge().micrometres();
    double in = piece.footRadius() + clearance + piece.tolerance() - PieceFaults.SHORT;
    return moved(load, piece, edge.in(in));
  }

  static Optional<Load> bellyOverEdge(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece -> {
              double in = piece.widestRadius() + piece.tolerance() - PieceFaults.SHORT;
              ShelfEdge edge = ShelfEdge.outer(outline(load, piece));
              return StudioEdit.bodiesOverShelf(moved(load, piece, edge.in(in)));
            });
  }

  private static shelfful.kiln.ShelfOutline outline(Load load, PlacedPiece piece) {
    return ShelfFaults.shelf(load, piece.layer()).outline();
  }

  private static Load moved(Load load, PlacedPiece piece, ShelfEdge to) {
    Point at = ShelfEdge.laid(ShelfFaults.place(load, piece.layer()), to);
    return LoadEdit.moved(load, piece, at.x().micrometres(), at.y().micrometres());
  }
}
