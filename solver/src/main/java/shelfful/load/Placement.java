package shelfful.load;

import shelfful.measure.Angle;
import shelfful.measure.Point;

/**
 * Where one piece stands. Its height is the top of its layer's shelf.
 *
 * @param pieceId the piece
 * @param at its axis, chamber frame
 * @param turn of its form's frame
 * @param onCatcher whether it stands on a catcher
 */
public record Placement(String pieceId, Point at, Angle turn, boolean onCatcher) {}
