package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets short rows of words in columns as narrow as their widest words, so that figures stand under
 * each other.
 */
final class KeyCells {
  private static final double GAP = 2.4;
  private static final double BETWEEN = 6;

  private final List<Double> stops = new ArrayList<>();

  /** Takes the measure of all rows that are to line up; a row may lack its last words. */
  KeyCells(List<List<String>> rows) {
    int parts = rows.stream().mapToInt(List::size).max().orElse(0);
    double end = 0;
    for (int i = 0; i < parts; i++) {
      int part = i;
      double widest =
          rows.stream()
              .filter(row -> part < row.size())
              .mapToDouble(row -> style(part).wording().width(row.get(part)))
              .max()
              .orElse(0);
      end += widest + (i == 0 ? 0 : GAP);
      stops.add(end);
    }
  }

  /** The first words are what a reader looks for. */
  private static TextStyle style(int part) {
    return part == 0 ? TextStyle.SMALL_STRONG : TextStyle.SMALL;
  }

  double width() {
    return stops.isEmpty() ? 0 : stops.get(stops.size() - 1);
  }

  /** How many rows fit side by side. */
  int across(double width) {
    return Math.max(1, (int) ((width + BETWEEN) / (width() + BETWEEN)));
  }

  /** Draws one row from a spot, each word ending at its stop, no further than a width. */
  void draw(SheetDraft sheet, Spot at, List<String> row, double width) {
    for (int i = 0; i < row.size(); i++) {
      double end = Math.min(stops.get(i), width);
      double most = end - (i == 0 ? 0 : Math.min(stops.get(i - 1), width));
      sheet.text(at.plus(end, 0), row.get(i), style(i), Anchor.END, most);
    }
  }
}
