package shelfful.ui.firings;

import java.util.Optional;
import shelfful.record.PieceResult;

/**
 * A piece that stood in a firing, in a list of its layer.
 *
 * @param number on the sheet, or in the record's order where the plan is not at hand
 * @param pieceId the piece
 * @param what form and glaze
 * @param result how it came out, where somebody has looked
 */
public record UnpackedRow(int number, String pieceId, String what, Optional<PieceResult> result) {}
