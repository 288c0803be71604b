package shelfful.choice;

import java.util.ArrayList;
import java.util.List;

/**
 * What is to be chosen from.
 *
 * @param columns those that others stand on first
 * @param worth of the ware
 * @param classes how many height classes there are, the lowest first
 * @param spots how many shelf places there are
 */
public record ChoiceProblem(List<StackColumn> columns, KindWorth worth, int classes, int spots) {
  /** Takes its own copy. */
  public ChoiceProblem {
    columns = List.copyOf(columns);
  }

  /** Columns that stand on this one. */
  List<Integer> above(int column) {
    List<Integer> above = new ArrayList<>();
    for (int c = 0; c < columns.size(); c++) {
      if (columns.get(c).below() == column) {
        above.add(c);
      }
    }
    return above;
  }

  /** What so many of each kind are worth. */
  public double worthOf(int[] counts) {
    return worth.of(counts);
  }
}
