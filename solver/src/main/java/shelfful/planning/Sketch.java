package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which lots stand on which shelf, as counts: {@code count(column, level, place, lot)}. Levels are
 * counted from the bottom of their column; none is empty but those that are held. What is held
 * stays through every change. Not immutable; {@link #copy()} before changing.
 */
final class Sketch {
  private final int lots;
  private final Held held;
  private final List<List<int[][]>> columns;

  Sketch(int columns, int lots) {
    this(Held.nothing(columns, lots));
  }

  Sketch(Held held) {
    this.lots = held.kept().length;
    this.held = held;
    this.columns = new ArrayList<>();
    for (int c = 0; c < held.leastLevels().length; c++) {
      this.columns.add(new ArrayList<>());
    }
  }

  private Sketch(Sketch other) {
    this(other.held);
    for (int c = 0; c < columns.size(); c++) {
      for (int[][] level : other.columns.get(c)) {
        columns.get(c).add(copyOf(level));
      }
    }
  }

  private static int[][] copyOf(int[][] level) {
    int[][] copy = new int[level.length][];
    for (int p = 0; p < level.length; p++) {
      copy[p] = level[p].clone();
    }
    return copy;
  }

  Sketch copy() {
    return new Sketch(this);
  }

  int columns() {
    return columns.size();
  }

  int levels(int column) {
    return columns.get(column).size();
  }

  int places(int column, int level) {
    return columns.get(column).get(level).length;
  }

  /** The counts by lot on one shelf; the caller may change them. */
  int[] counts(int column, int level, int place) {
    return columns.get(column).get(level)[place];
  }

  void insertLevel(int column, int level, int places) {
    columns.get(column).add(level, new int[places][lots]);
  }

  Held held() {
    return held;
  }

  /** Takes a level out, or where it is held all that may leave it; false when the level stays. */
  boolean removeLevel(int column, int level) {
    if (!held.keepsLevel(column, level)) {
      columns.get(column).remove(level);
      return true;
    }
    for (int[] counts : columns.get(column).get(level)) {
      for (int lot = 0; lot < lots; lot++) {
        counts[lot] = held.kept()[lot] ? counts[lot] : 0;
      }
    }
    return false;
  }

  void swapLevels(int column, int level, int otherColumn, int otherLevel) {
    int[][] kept = columns.get(column).get(level);
    columns.get(column).set(level, columns.get(otherColumn).get(otherLevel));
    columns.get(otherColumn).set(otherLevel, kept);
  }

  /** Takes up to so many of a lot off one spot's shelves, the highest first; returns how many. */
  int takeOff(Spot spot, int lot, int most) {
    int taken = 0;
    if (held.kept()[lot]) {
      return 0;
    }
    for (int l = levels(spot.column()) - 1; l >= 0 && taken < most; l--) {
      int[] counts = counts(spot.column(), l, spot.place());
      int here = Math.min(most - taken, counts[lot]);
      counts[lot] -= here;
      taken += here;
    }
    return taken;
  }

  boolean isEmpty(int column, int level) {
    for (int[] counts : columns.get(column).get(level)) {
      for (int count : counts) {
        if (count > 0) {
          return false;
        }
      }
    }
    return true;
  }

  void dropEmptyLevels() {
    for (int c = 0; c < columns.size(); c++) {
      for (int l = levels(c) - 1; l >= held.leastLevels()[c]; l--) {
        if (isEmpty(c, l)) {
          removeLevel(c, l);
        }
      }
    }
  }

  /** How many of each lot are in. */
  int[] placed() {
    int[] placed = new int[lots];
    for (List<int[][]> column : columns) {
      for (int[][] level : column) {
        for (int[] counts : level) {
          for (int lot = 0; lot < lots; lot++) {
            placed[lot] += counts[lot];
          }
        }
      }
    }
    return placed;
  }

  @Override
  public boolean equals(Object other) {
    if (!(other instanceof Sketch that) || that.columns.size() != columns.size()) {
      return false;
    }
    for (int c = 0; c < columns.size(); c++) {
      if (!Arrays.deepEquals(columns.get(c).toArray(), that.columns.get(c).toArray())) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    int hash = 1;
    for (List<int[][]> column : columns) {
      hash = 31 * hash + Arrays.deepHashCode(column.toArray());
    }
    return hash;
  }
}
