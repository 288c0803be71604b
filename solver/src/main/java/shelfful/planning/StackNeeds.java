package shelfful.planning;

import java.util.ArrayList;
import java.util.List;

/**
 * What a stack of shelves must carry: for each level of each column the tallest thing on it (over
 * the shelf, micrometres) and the grams on each of its shelves.
 */
final class StackNeeds {
  private final List<List<Level>> columns = new ArrayList<>();

  /** Tallest in micrometres; grams by place. */
  record Level(long tallest, long[] grams) {}

  StackNeeds(int columns) {
    for (int c = 0; c < columns; c++) {
      this.columns.add(new ArrayList<>());
    }
  }

  static StackNeeds of(Sketch sketch, List<Lot> lots) {
    StackNeeds needs = new StackNeeds(sketch.columns());
    for (int c = 0; c < sketch.columns(); c++) {
      for (int l = 0; l < sketch.levels(c); l++) {
        needs.columns.get(c).add(level(sketch, c, l, lots));
      }
    }
    return needs;
  }

  private static Level level(Sketch sketch, int column, int level, List<Lot> lots) {
    long tallest = 0;
    long[] grams = new long[sketch.places(column, level)];
    for (int p = 0; p < grams.length; p++) {
      int[] counts = sketch.counts(column, level, p);
      for (int lot = 0; lot < counts.length; lot++) {
        if (counts[lot] > 0) {
          tallest = Math.max(tallest, lots.get(lot).height());
          grams[p] += counts[lot] * lots.get(lot).grams();
        }
      }
    }
    return new Level(tallest, grams);
  }

  /** The same with one more level. */
  StackNeeds with(int column, int level, Level more) {
    StackNeeds needs = new StackNeeds(columns.size());
    for (int c = 0; c < columns.size(); c++) {
      needs.columns.get(c).addAll(columns.get(c));
    }
    needs.columns.get(column).add(level, more);
    return needs;
  }

  /** The same with a level that carries something else. */
  StackNeeds instead(int column, int level, Level other) {
    StackNeeds needs = new StackNeeds(columns.size());
    for (int c = 0; c < columns.size(); c++) {
      needs.columns.get(c).addAll(columns.get(c));
    }
    needs.columns.get(column).set(level, other);
    return needs;
  }

  int levels(int column) {
    return columns.get(column).size();
  }

  Level level(int column, int level) {
    return columns.get(column).get(level);
  }

  boolean isBuilt(int column) {
    return !columns.get(column).isEmpty();
  }
}
