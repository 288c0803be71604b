package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.load.LayerPlace;
import shelfful.measure.Point;
import shelfful.studio.Studio;

/**
 * Two shelf places of a column plan that can be asked about as one at every level: both of one
 * column, or the only ones of two columns that are then built level by level.
 *
 * @param first the column of the place on the positive side of the joint
 * @param firstPlace which of its places
 * @param second the column of the other place; the same one where it has both
 * @param secondPlace which of its places
 * @param shelves kinds of shelf that may lie in both places and join there, the preferred one first
 * @param twins for each of these kinds, two of them as one
 */
record TwinColumns(
    Column first,
    int firstPlace,
    Column second,
    int secondPlace,
    List<Shelf> shelves,
    List<TwinShelf> twins) {
  TwinColumns {
    shelves = List.copyOf(shelves);
    twins = List.copyOf(twins);
  }

  /** The pairs within columns of two places. */
  static List<TwinColumns> within(Studio studio, ColumnPlan plan) {
    List<TwinColumns> pairs = new ArrayList<>();
    for (Column column : plan.columns()) {
      if (column.places().size() == 2) {
        pair(studio, column, 0, column, 1).ifPresent(pairs::add);
      }
    }
    return pairs;
  }

  /**
   * Those within columns, and pairs of columns of one place each, each with the first that joins.
   */
  static List<TwinColumns> across(Studio studio, ColumnPlan plan) {
    List<TwinColumns> pairs = new ArrayList<>(within(studio, plan));
    List<Column> left = new ArrayList<>(plan.columns());
    left.removeIf(column -> column.places().size() != 1);
    while (!left.isEmpty()) {
      Column one = left.remove(0);
      for (Column other : left) {
        Optional<TwinColumns> pair =
            mayBeBuiltTogether(plan, one, other)
                ? pair(studio, one, 0, other, 0)
                : Optional.empty();
        if (pair.isPresent()) {
          pairs.add(pair.get());
          left.remove(other);
          break;
        }
      }
    }
    return pairs;
  }

  /** Whether both stand on the same, and nothing stands on one of them alone. */
  private static boolean mayBeBuiltTogether(ColumnPlan plan, Column one, Column other) {
    return Set.copyOf(one.standsOn()).equals(Set.copyOf(other.standsOn()))
        && plan.columns().stream()
            .map(Column::standsOn)
            .allMatch(below -> below.contains(one.id()) == below.contains(other.id()));
  }

  private static Optional<TwinColumns> pair(
      Studio studio, Column one, int place, Column other, int otherPlace) {
    return inOrder(studio, one, place, other, otherPlace)
        .or(() -> inOrder(studio, other, otherPlace, one, place));
  }

  private static Optional<TwinColumns> inOrder(
      Studio studio, Column first, int firstPlace, Column second, int secondPlace) {
    ShelfPlace here = first.places().get(firstPlace);
    ShelfPlace there = second.places().get(secondPlace);
    List<Shelf> shelves = new ArrayList<>();
    List<TwinShelf> twins = new ArrayList<>();
    for (String id : here.shelfIds()) {
      Optional<Shelf> shelf = studio.shelf(id).filter(kind -> there.shelfIds().contains(id));
      Optional<TwinShelf> twin = shelf.flatMap(kind -> TwinShelf.of(kind, here, there));
      if (twin.isPresent()) {
        shelves.add(shelf.get());
        twins.add(twin.get());
      }
    }
    return twins.isEmpty()
        ? Optional.empty()
        : Optional.of(new TwinColumns(first, firstPlace, second, secondPlace, shelves, twins));
  }

  /** Whether a layer lies in its first place. */
  boolean isFirst(LayerPlace place) {
    return place.columnId().equals(first.id()) && place.place() == firstPlace;
  }

  /** Whether a layer lies in one of its places. */
  boolean holds(LayerPlace place) {
    return isFirst(place) || place.columnId().equals(second.id()) && place.place() == secondPlace;
  }

  boolean isOf(Column column) {
    return first.equals(column) || second.equals(column);
  }

  /** Whether both places are in one column. */
  boolean isWithinAColumn() {
    return first.equals(second);
  }

  /** The column that stands for both: its name is the first one's. */
  String id() {
    return first.id();
  }

  /** Where posts stand for both. */
  List<Point> posts() {
    return Stream.concat(first.posts().stream(), second.posts().stream()).distinct().toList();
  }
}
