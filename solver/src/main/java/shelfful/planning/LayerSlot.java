package shelfful.planning;

/**
 * A shelf that a column might have: the level is counted from the bottom, and levels without ware
 * are not built. For a piece in a pile also which pile.
 *
 * @param column index in the column plan
 * @param level from 0 at the bottom
 * @param place index within the column
 * @param tower the lot of piles that the piece is set in, or {@link #ALONE}
 */
record LayerSlot(int column, int level, int place, int tower) {
  static final int ALONE = -1;

  LayerSlot(int column, int level, int place) {
    this(column, level, place, ALONE);
  }

  /** The shelf, however the piece is set on it. */
  LayerSlot shelf() {
    return tower == ALONE ? this : in(ALONE);
  }

  /** The same shelf in a pile. */
  LayerSlot in(int pile) {
    return new LayerSlot(column, level, place, pile);
  }
}
