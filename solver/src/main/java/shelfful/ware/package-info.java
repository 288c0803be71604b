/**
 * What is made: forms and their outlines, glazes, batches of a list, single pieces.
 *
 * <p>Everything here is measured in a form's own frame: origin on the axis of the piece at its
 * foot, x to the right as it is drawn, y away, z up.
 */
package shelfful.ware;
