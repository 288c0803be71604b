/**
 * The batch list as a table to be edited in place, and pasting rows from a spreadsheet into it.
 *
 * <p>A row may be wrong while it is written; its faults are told at its cells and in a list, and
 * only rows without faults are batches. Every change is a named edit from one list to another.
 */
package shelfful.ui.batches;
