package shelfful.files;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;

/** Which column of a plan stands on which, over any number of others. */
final class Columns {
  private Columns() {}

  static boolean oneStandsOnTheOther(ColumnPlan plan, Column a, Column b) {
    return below(plan, a).contains(b.id()) || below(plan, b).contains(a.id());
  }

  private static Set<String> below(ColumnPlan plan, Column column) {
    Set<String> below = new HashSet<>();
    Deque<String> next = new ArrayDeque<>(column.standsOn());
    while (!next.isEmpty()) {
      String id = next.pop();
      if (below.add(id)) {
        plan.columns().stream()
            .filter(c -> c.id().equals(id))
            .forEach(c -> next.addAll(c.standsOn()));
      }
    }
    return below;
  }
}
