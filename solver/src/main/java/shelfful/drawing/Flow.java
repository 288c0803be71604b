package shelfful.drawing;

import java.util.List;

/**
 * Sets headings, tables and paragraphs one under another and opens further pages when one is full.
 */
final class Flow {
  private final Pages pages;
  private final String continued;
  private SheetDraft sheet;
  private double y;

  /**
   * A flow that starts on a page of its own.
   *
   * @param continued the head of each of its pages
   */
  Flow(Pages pages, String continued) {
    this.pages = pages;
    this.continued = continued;
    openPage();
  }

  private void openPage() {
    sheet = pages.open();
    Box body = sheet.body();
    sheet.text(new Spot(body.left(), body.top() + 5), continued, TextStyle.HEAD, body.width());
    sheet.line(
        new Spot(body.left(), body.top() + 8),
        new Spot(body.right(), body.top() + 8),
        Pen.solid(0.5, Ink.BLACK));
    y = body.top() + 9;
  }

  private boolean lacks(double height) {
    return y + height > sheet.body().bottom();
  }

  private void need(double height) {
    if (lacks(height)) {
      openPage();
    }
  }

  void section(String title, double withAtLeast) {
    need(9 + withAtLeast);
    y += 8;
    sheet.text(new Spot(sheet.body().left(), y), title, TextStyle.SECTION, sheet.body().width());
    y += 1.5;
  }

  void table(Table table) {
    need(2 * Table.PITCH + 2);
    head(table);
    for (Table.Row row : table.rows()) {
      double height = table.height(sheet.body(), row);
      if (lacks(height)) {
        openPage();
        head(table);
      }
      table.row(sheet, sheet.body(), y + Table.PITCH, row);
      y += height;
    }
  }

  private void head(Table table) {
    y += Table.PITCH;
    table.head(sheet, sheet.body(), y);
    y += 1;
  }

  /** A sentence about the entries that follow, on a page with the first of them. */
  void remark(String sentence) {
    if (sentence.isEmpty()) {
      return;
    }
    double width = sheet.body().width();
    List<String> lines = TextStyle.BODY.wording().wrap("→ " + sentence, width);
    need((lines.size() + 3) * Table.PITCH + 1.5);
    y += 1.5;
    for (String line : lines) {
      y += Table.PITCH;
      sheet.text(new Spot(sheet.body().left(), y), line, TextStyle.BODY, width);
    }
  }

  /** A bold line and lines under it that stay on one page with it. */
  void entry(String strong, List<String> lines) {
    double indent = 4;
    double width = sheet.body().width() - indent;
    List<String> wrapped =
        lines.stream()
            .flatMap(line -> TextStyle.BODY.wording().wrap(line, width).stream())
            .toList();
    need((wrapped.size() + 1) * Table.PITCH + 1.5);
    y += Table.PITCH + 1.2;
    sheet.text(new Spot(sheet.body().left(), y), strong, TextStyle.STRONG, sheet.body().width());
    for (String line : wrapped) {
      need(Table.PITCH);
      y += Table.PITCH;
      sheet.text(new Spot(sheet.body().left() + indent, y), line, TextStyle.BODY, width);
    }
  }
}
