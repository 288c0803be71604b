/**
 * The loading sheets: an inspected load becomes a list of marks in millimetres of paper, and
 * surfaces paint those marks and nothing else, so that paper, screen and file cannot disagree.
 *
 * <p>Sheet frame: origin at the top left corner of the paper, x to the right, y down, both in
 * millimetres. The plan's far side lies at the top of the paper and its front at the bottom. Text
 * sizes are in points (1/72 in). This is the only package that knows PDF.
 */
package shelfful.drawing;
