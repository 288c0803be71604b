package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * A piece where it stands, on its shelf or in a pile, with its outlines in the chamber frame.
 *
 * @param made the piece, its form and its glaze
 * @param placement as the load says
 * @param shelf it stands on
 * @param ware its sizes, upright
 * @param foot what its foot or catcher covers, or its rim where that is below
 * @param parts its bands and lugs
 * @param heights it reaches through, over the chamber floor
 * @param tolerance that is added to every clearance it is in
 */
record StandingPiece(
    MadePiece made,
    Placement placement,
    LaidShelf shelf,
    StandingWare ware,
    Footprint foot,
    List<PiecePart> parts,
    HeightRange heights,
    long tolerance) {

  /** A piece of the list with what the studio knows of it. */
  record MadePiece(Piece piece, Form form, Optional<Glaze> glaze) {}

  static StandingPiece of(MadePiece made, Placement placement, LaidShelf shelf, StandingWare ware) {
    Point at = placement.at();
    Angle turn = placement.turn();
    boolean over = placement.rest().upsideDown();
    long bottom = shelf.top() + placement.rest().lift().micrometres();
    List<PiecePart> parts = new ArrayList<>();
    for (Band band : ware.bands()) {
      parts.add(PiecePart.of(over ? turnedOver(band, ware.height()) : band, at, turn, bottom));
    }
    for (Lug lug : ware.lugs()) {
      parts.add(PiecePart.of(over ? turnedOver(lug, ware.height()) : lug, at, turn, bottom));
    }
    Outline below = over ? ware.bands().get(ware.bands().size() - 1).outline() : ware.foot();
    return new StandingPiece(
        made,
        placement,
        shelf,
        ware,
        PiecePart.footprint(below, at, turn),
        List.copyOf(parts),
        new HeightRange(bottom, bottom + ware.height().micrometres()),
        made.form().tolerance().micrometres());
  }

  /** What was so far from the rim is so far from what it stands on. */
  private static Band turnedOver(Band band, Length height) {
    return new Band(band.outline(), height.minus(band.to()), height.minus(band.from()));
  }

  /** Turned over about the x axis of its form, what pointed up the plan points down. */
  private static Lug turnedOver(Lug lug, Length height) {
    return new Lug(
        lug.name(),
        new Angle(-lug.direction().millidegrees()),
        lug.reach(),
        lug.width(),
        height.minus(lug.to()),
        height.minus(lug.from()));
  }

  /**
   * A whole pile as if it were one piece, for telling what is beside it.
   *
   * @param pieces the lowest first
   */
  static StandingPiece pile(List<StandingPiece> pieces) {
    StandingPiece lowest = pieces.get(0);
    return new StandingPiece(
        lowest.made,
        lowest.placement,
        lowest.shelf,
        lowest.ware,
        lowest.foot,
        pieces.stream().flatMap(piece -> piece.parts.stream()).toList(),
        new HeightRange(
            lowest.heights.bottom(),
            pieces.stream().mapToLong(StandingPiece::top).max().orElseThrow()),
        pieces.stream().mapToLong(StandingPiece::tolerance).max().orElseThrow());
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

  boolean isOnShelf() {
    return placement.rest().isOnShelf();
  }

  long top() {
    return heights.top();
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
