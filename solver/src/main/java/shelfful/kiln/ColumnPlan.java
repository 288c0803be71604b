package shelfful.kiln;

import java.util.List;

/**
 * One way of standing columns in a kiln. A kiln may have several; a load uses one.
 *
 * @param id unique within a kiln
 * @param name as the potter says it, for instance {@code full shelves below, halves above}
 * @param columns lower ones before those that stand on them
 */
public record ColumnPlan(String id, String name, List<Column> columns) {
  /**
   * Takes its own copy; refuses an empty plan and a column that stands on one not listed before it.
   */
  public ColumnPlan {
    columns = List.copyOf(columns);
    if (columns.isEmpty()) {
      throw new IllegalArgumentException("The column plan " + id + " has no column");
    }
    for (int i = 0; i < columns.size(); i++) {
      List<String> before = columns.subList(0, i).stream().map(Column::id).toList();
      for (String below : columns.get(i).standsOn()) {
        if (!before.contains(below)) {
          throw new IllegalArgumentException(
              "The column "
                  + columns.get(i).id()
                  + " stands on "
                  + below
                  + ", not listed before it");
        }
      }
    }
  }

  /** The shelves its places take, each kind once, in the order of the columns. */
  public List<String> shelfIds() {
    return columns.stream()
        .flatMap(column -> column.places().stream())
        .flatMap(place -> place.shelfIds().stream())
        .distinct()
        .toList();
  }

  /** How many posts stand under one layer, in the column that takes the most. */
  public int postsAtOneLevel() {
    return columns.stream().mapToInt(column -> column.posts().size()).max().orElseThrow();
  }
}
