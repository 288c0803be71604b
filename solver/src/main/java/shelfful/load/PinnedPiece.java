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
 */
public record PinnedPiece(String pieceId, LayerPlace layer, Point at, Angle turn) {}
