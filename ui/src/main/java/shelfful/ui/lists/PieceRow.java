package shelfful.ui.lists;

import shelfful.drawing.LayerList;

/**
 * A piece that stands, with all that is told of it.
 *
 * @param piece its number, form, glaze and place
 * @param gap to the piece nearest to it, with its unit; empty text when there is none
 * @param nearest what it comes closest to, by its number
 * @param status what else there is to say: size, pin, faults; as the end of a sentence
 */
public record PieceRow(LayerList.Row piece, String gap, String nearest, String status) {}
