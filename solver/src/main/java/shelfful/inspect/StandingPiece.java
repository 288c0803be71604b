package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Point;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * A piece where it stands, with its outlines in the chamber frame.
 *
 * @param made the piece, its form and its glaze
 * @param placement as the load says
 * @param shelf it stands on
 * @param ware its sizes
 * @param foot what its foot or catcher covers
 * @param parts its bands and lugs
 */
record StandingPiece(
    MadePiece made,
    Placement placement,
    LaidShelf shelf,
    StandingWare ware,
    Footprint foot,
    List<PiecePart> parts) {

  /** A piece of the list with what the studio knows of it. */
  record MadePiece(Piece piece, Form form, Optional<Glaze> glaze) {}

  static StandingPiece of(MadePiece made, Placement placement, LaidShelf shelf, StandingWare ware) {
    Point at = placement.at();
    Angle turn = placement.turn();
    List<PiecePart> parts = new ArrayList<>();
    ware.bands().forEach(band -> parts.add(PiecePart.of(band, at, turn, shelf.top())));
    ware.lugs().forEach(lug -> parts.add(PiecePart.of(lug, at, turn, shelf.top())));
    Footprint foot = PiecePart.footprint(ware.foot(), at, turn);
    return new StandingPiece(made, placement, shelf, ware, foot, List.copyOf(parts));
  }

  String id() {
    return made.piece().id();
  }

  String layerId() {
    return shelf.layer().id();
  }

  Optional<Glaze> glaze() {
    return made.glaze();
  }

  long tolerance() {
    return made.form().tolerance().micrometres();
  }

  HeightRange heights() {
    return new HeightRange(shelf.top(), top());
  }

  long top() {
    return shelf.top() + ware.height().micrometres();
  }

  Vector axis() {
    return Vector.of(placement.at());
  }

  /** No part of it is farther from its axis. */
  double reach() {
    double farthest = 0;
    for (PiecePart part : parts) {
      Footprint footprint = part.footprint();
      farthest = Math.max(farthest, footprint.middle().minus(axis()).length() + footprint.reach());
    }
    return farthest;
  }
}
