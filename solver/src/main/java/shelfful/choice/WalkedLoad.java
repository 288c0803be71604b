package shelfful.choice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** The levels of a load while some are taken off and others put on; can go back to a mark. */
final class WalkedLoad {
  private final ChoiceProblem problem;
  private final List<List<ChosenLevel>> columns = new ArrayList<>();
  private final List<List<Integer>> above = new ArrayList<>();
  private final long[] taken;
  private final int[] used;
  private final Deque<Change> changes = new ArrayDeque<>();
  private int levels;

  WalkedLoad(ChoiceProblem problem) {
    this.problem = problem;
    this.taken = new long[problem.columns().size()];
    this.used = new int[problem.worth().kinds()];
    for (int c = 0; c < taken.length; c++) {
      columns.add(new ArrayList<>());
      above.add(problem.above(c));
    }
  }

  /** A level put on or taken off. */
  private record Change(int column, ChosenLevel level, boolean putOn) {}

  /** From here on changes can be taken back. */
  void mark() {
    changes.clear();
  }

  /** Takes back all changes since the mark. */
  void back() {
    while (!changes.isEmpty()) {
      Change change = changes.pop();
      List<ChosenLevel> column = columns.get(change.column());
      if (change.putOn()) {
        column.remove(change.level());
        count(change.column(), change.level(), -1);
      } else {
        column.add(change.level());
        count(change.column(), change.level(), 1);
      }
    }
  }

  void putOn(int column, ChosenLevel level) {
    columns.get(column).add(level);
    count(column, level, 1);
    changes.push(new Change(column, level, true));
  }

  /** Takes off one of all levels, by number; false when what stands on its column needs it. */
  boolean takeOff(int number) {
    int column = 0;
    int at = number;
    while (at >= columns.get(column).size()) {
      at -= columns.get(column).size();
      column++;
    }
    List<ChosenLevel> here = columns.get(column);
    if (here.size() == 1 && carries(column)) {
      return false;
    }
    ChosenLevel level = here.remove(at);
    count(column, level, -1);
    changes.push(new Change(column, level, false));
    return true;
  }

  private void count(int column, ChosenLevel level, int times) {
    taken[column] += times * takes(column, level.heightClass(), level.onTop());
    levels += times;
    level.contents().forEach(content -> use(content, times));
  }

  /** Reckons with a content as if it stood somewhere; −1 times to have done with it. */
  void use(KnownLayer content, int times) {
    content.addTo(used, times);
  }

  long takes(int column, int heightClass, boolean onTop) {
    return problem.columns().get(column).takes(onTop)[heightClass];
  }

  /** The height that a column may still take. */
  long room(int column) {
    long below = 0;
    int at = column;
    int root = column;
    while (at >= 0) {
      below += taken[at];
      root = at;
      at = problem.columns().get(at).below();
    }
    return problem.columns().get(root).capacity() - below - highestAbove(column);
  }

  private long highestAbove(int column) {
    long highest = 0;
    for (int upper : above.get(column)) {
      highest = Math.max(highest, taken[upper] + highestAbove(upper));
    }
    return highest;
  }

  /** Whether a column may have one level more. */
  boolean mayGrow(int column) {
    StackColumn stack = problem.columns().get(column);
    boolean founded = stack.below() < 0 || size(stack.below()) > 0 && !isClosed(stack.below());
    return founded && size(column) < stack.mostLevels();
  }

  /** Whether a level over which nothing may be built may be put on. */
  boolean mayBeClosed(int column) {
    return !isClosed(column) && !carries(column);
  }

  private boolean isClosed(int column) {
    for (ChosenLevel level : columns.get(column)) {
      if (level.onTop()) {
        return true;
      }
    }
    return false;
  }

  private boolean carries(int column) {
    for (int upper : above.get(column)) {
      if (size(upper) > 0) {
        return true;
      }
    }
    return false;
  }

  private int size(int column) {
    return columns.get(column).size();
  }

  /** How many levels there are in all. */
  int levels() {
    return levels;
  }

  double worth() {
    return problem.worth().of(used);
  }

  /** What a content would add to the worth. */
  double adds(KnownLayer content) {
    return problem.worth().adds(content, used);
  }

  /** Height taken by the levels of a column. */
  long taken(int column) {
    return taken[column];
  }

  /** The levels of a column, in no order. */
  List<ChosenLevel> column(int column) {
    return columns.get(column);
  }

  /** A copy of all levels by column, the closing one last. */
  List<List<ChosenLevel>> inOrder() {
    List<List<ChosenLevel>> copy = new ArrayList<>();
    for (List<ChosenLevel> column : columns) {
      List<ChosenLevel> ordered = new ArrayList<>(column.size());
      column.stream().filter(level -> !level.onTop()).forEach(ordered::add);
      column.stream().filter(ChosenLevel::onTop).forEach(ordered::add);
      copy.add(ordered);
    }
    return copy;
  }
}
