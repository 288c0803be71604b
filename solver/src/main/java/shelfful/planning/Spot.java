package shelfful.planning;

import java.util.List;
import shelfful.kiln.Column;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;

/**
 * One shelf place of one column: at each level of the column a shelf lies here.
 *
 * @param index among the spots of a column plan
 * @param column index of its column
 * @param place index within the column
 * @param owner the column
 * @param where the shelf lies
 * @param shelves kinds that may lie here and may be fired this hot, the preferred one first
 */
record Spot(int index, int column, int place, Column owner, ShelfPlace where, List<Shelf> shelves) {
  Spot {
    shelves = List.copyOf(shelves);
  }

  ShelfFrame frame() {
    return ShelfFrame.of(where);
  }
}
