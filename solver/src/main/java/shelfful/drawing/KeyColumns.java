package shelfful.drawing;

import java.util.List;

/**
 * Sets key rows in two columns side by side, broken between groups where that leaves them about
 * equally long; in one where the room is narrow. All widths and heights are millimetres.
 */
final class KeyColumns {
  private static final double GUTTER = 8;

  /** Narrower than this there is one column only, in millimetres. */
  private static final double LEAST_FOR_TWO = 130;

  /** How much longer than an even share a column may be so that no group is torn. */
  private static final double UNEVEN = 1.35;

  private KeyColumns() {}

  static double columnWidth(double width) {
    return width < LEAST_FOR_TWO ? width : (width - GUTTER) / 2;
  }

  /** How high the longer column becomes where there is room enough, in millimetres. */
  static double height(List<KeyRow> rows, double width) {
    if (width < LEAST_FOR_TWO) {
      return height(rows, 0, rows.size()) + KeyRow.PITCH / 2;
    }
    int split = split(rows, Double.POSITIVE_INFINITY);
    return longer(rows, split) + KeyRow.PITCH / 2;
  }

  private static double longer(List<KeyRow> rows, int split) {
    return Math.max(height(rows, 0, split), height(rows, split, rows.size()));
  }

  /** The height of some of the rows set from the top of a column. */
  private static double height(List<KeyRow> rows, int from, int to) {
    double height = 0;
    for (int i = from; i < to; i++) {
      height += i == from ? KeyRow.PITCH : rows.get(i).height();
    }
    return height;
  }

  /** Draws rows from the top of a box until it is full; returns those that are left. */
  static List<KeyRow> draw(SheetDraft sheet, Box box, List<KeyRow> rows) {
    if (box.width() < LEAST_FOR_TWO) {
      int fitting = fitting(rows, box.height());
      column(sheet, box.left(), box, rows.subList(0, fitting));
      return rows.subList(fitting, rows.size());
    }
    int split = split(rows, box.height());
    column(sheet, box.left(), box, rows.subList(0, split));
    List<KeyRow> left = rows.subList(split, rows.size());
    int second = fitting(left, box.height());
    double width = columnWidth(box.width());
    column(sheet, box.left() + width + GUTTER, box, left.subList(0, second));
    return left.subList(second, left.size());
  }

  private static void column(SheetDraft sheet, double x, Box box, List<KeyRow> rows) {
    for (int i = 0; i < rows.size(); i++) {
      double y = box.top() + height(rows, 0, i + 1) - KeyRow.PITCH / 4;
      rows.get(i).draw(sheet, new Spot(x, y), columnWidth(box.width()));
    }
  }

  /** How many rows go into the first column. */
  private static int split(List<KeyRow> rows, double most) {
    double even = height(rows, 0, rows.size()) / 2;
    int best = 0;
    double bestHeight = Math.min(most, even * UNEVEN + KeyRow.PITCH);
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).kind() == KeyRow.Kind.HEADING && longer(rows, i) <= bestHeight) {
        best = i;
        bestHeight = longer(rows, i);
      }
    }
    return best > 0 ? best : fitting(rows, Math.min(most, even + 2 * KeyRow.PITCH));
  }

  /**
   * How many rows fit a height, no heading last unless all fit; at least one of them, so that all
   * get drawn.
   */
  private static int fitting(List<KeyRow> rows, double height) {
    int taken = 0;
    while (taken < rows.size() && height(rows, 0, taken + 1) <= height) {
      taken++;
    }
    while (taken < rows.size() && taken > 1 && rows.get(taken - 1).kind() != KeyRow.Kind.PLAIN) {
      taken--;
    }
    return Math.min(rows.size(), Math.max(1, taken));
  }
}
