package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rows in aligned columns.
 *
 * @param columns left to right
 * @param rows as many cells as columns
 */
record Table(List<Column> columns, List<Row> rows) {
  static final double PITCH = 4.4;
  private static final double GAP = 4;

  /**
   * A column: its title, its share of the width, and whether its cells are figures set to the
   * right.
   */
  record Column(String title, double share, boolean figures) {}

  /** A row, with a glaze sample before the cell of one column where it has one. */
  record Row(List<String> cells, Optional<GlazeSign> sign) {
    static Row of(String... cells) {
      return new Row(List.of(cells), Optional.empty());
    }
  }

  void head(SheetDraft sheet, Box box, double y) {
    draw(sheet, box, y, columns.stream().map(Column::title).toList(), TextStyle.QUIET);
    sheet.line(new Spot(box.left(), y + 1.3), new Spot(box.right(), y + 1.3), Pen.RULE);
  }

  /** The lines of a row's last cell, which is never shortened. */
  private List<String> last(Box box, Row row) {
    String cell = row.cells().get(row.cells().size() - 1);
    return TextStyle.BODY.wording().wrap(cell, width(box, columns.size() - 1));
  }

  private double width(Box box, int column) {
    double all = columns.stream().mapToDouble(Column::share).sum();
    return box.width() * columns.get(column).share() / all;
  }

  double height(Box box, Row row) {
    return last(box, row).size() * PITCH;
  }

  /** Draws a row whose first base line lies at y. */
  void row(SheetDraft sheet, Box box, double y, Row row) {
    List<String> last = last(box, row);
    List<String> cells = new ArrayList<>(row.cells());
    cells.set(cells.size() - 1, last.get(0));
    draw(sheet, box, y, cells, TextStyle.BODY);
    double left = box.right() - width(box, columns.size() - 1);
    for (int i = 1; i < last.size(); i++) {
      sheet.text(new Spot(left, y + i * PITCH), last.get(i), TextStyle.BODY, box.right() - left);
    }
    row.sign()
        .ifPresent(
            sign -> sign.sample(sheet, new Box(box.left(), y - 2.7, box.left() + 6, y + 0.5)));
  }

  private void draw(SheetDraft sheet, Box box, double y, List<String> cells, TextStyle style) {
    double x = box.left();
    for (int i = 0; i < columns.size(); i++) {
      double width = width(box, i);
      double most = i == columns.size() - 1 ? width : width - GAP;
      if (columns.get(i).figures()) {
        sheet.text(new Spot(x + most, y), cells.get(i), style, Anchor.END, most);
      } else {
        sheet.text(new Spot(x, y), cells.get(i), style, most);
      }
      x += width;
    }
  }
}
