package shelfful.planning;

import java.util.Arrays;
import java.util.List;
import shelfful.packing.Packed;

/**
 * One level of a column as some load has it: the contents of the shelf in every place, and how they
 * stand.
 *
 * @param column index in its column plan
 * @param counts by place and lot
 * @param settings by place, in the shelf's own frame; kinds as in the request's ware
 * @param tallest over the shelf, in micrometres: the height class it needs
 * @param mayCarry whether it also goes with posts standing on its shelves, not only on top
 */
record PooledLevel(
    int column, int[][] counts, List<Packed> settings, long tallest, boolean mayCarry) {
  PooledLevel {
    settings = List.copyOf(settings);
  }

  int count(int lot) {
    int count = 0;
    for (int[] place : counts) {
      count += place[lot];
    }
    return count;
  }

  /** Whether another has the same contents in the same places. */
  boolean isLike(PooledLevel other) {
    return column == other.column && Arrays.deepEquals(counts, other.counts);
  }
}
