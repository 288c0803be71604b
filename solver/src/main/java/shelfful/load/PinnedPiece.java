package shelfful.load;

import shelfful.measure.Angle;
import shelfful.measure.Point;

/**
 * A piece that stays where it is in the plan while the rest is planned again. Its layer keeps its
 * number, but not its height.
 *
 * @param pieceId the piece
 * @param layer the layer it stands on
 * @param at its axis, chamber frame
 * @param turn of its form's frame
 * @param rest what carries it and how it lies; what carries it must stay as well
 */
public record PinnedPiece(String pieceId, LayerPlace layer, Point at, Angle turn, Rest rest) {

  /** A piece upright on its shelf. */
  public PinnedPiece(String pieceId, LayerPlace layer, Point at, Angle turn) {
    this(pieceId, layer, at, turn, Rest.ON_SHELF);
  }

  /** A piece as a load has it. */
  public static PinnedPiece of(LayerPlace layer, Placement one) {
    return new PinnedPiece(one.pieceId(), layer, one.at(), one.turn(), one.rest());
  }
}
