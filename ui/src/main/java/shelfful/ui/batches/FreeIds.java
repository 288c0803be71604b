package shelfful.ui.batches;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Ids for rows that are added to a list; none is given twice, in whatever letters it is written.
 */
final class FreeIds {
  private final Set<String> taken = new HashSet<>();
  private final int rows;

  /** Begins with the ids of the rows there are. */
  FreeIds(List<List<String>> rows) {
    this.rows = rows.size();
    rows.forEach(row -> taken.add(row.get(0).toLowerCase(Locale.ROOT)));
  }

  /** The id wanted if it is free, or else the next free B and number. */
  String free(String wanted) {
    String free = wanted;
    for (int number = rows + 1;
        free.isEmpty() || taken.contains(free.toLowerCase(Locale.ROOT));
        number++) {
      free = "B" + number;
    }
    taken.add(free.toLowerCase(Locale.ROOT));
    return free;
  }
}
