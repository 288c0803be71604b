package shelfful.planning;

/**
 * A shelf that a column might have: the level is counted from the bottom, and levels without ware
 * are not built.
 *
 * @param column index in the column plan
 * @param level from 0 at the bottom
 * @param place index within the column
 */
record LayerSlot(int column, int level, int place) {}
