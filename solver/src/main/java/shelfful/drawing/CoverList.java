package shelfful.drawing;

/** Counted things one under another in a box of the cover. */
final class CoverList {
  private static final double COUNT = 12;
  private static final double OVER_HEADING = 2;

  private final SheetDraft sheet;
  private final Box box;
  private double y;

  CoverList(SheetDraft sheet, Box box) {
    this.sheet = sheet;
    this.box = box;
    this.y = box.top() - OVER_HEADING;
  }

  /** How many more lines fit. */
  int room() {
    return (int) Math.floor((box.bottom() - y) / Table.PITCH);
  }

  void heading(String title) {
    y += OVER_HEADING + 5.5;
    sheet.text(new Spot(box.left(), y), title, TextStyle.SECTION, box.width());
    y += 1.5;
  }

  void line(int count, String name) {
    y += Table.PITCH;
    Spot end = new Spot(box.left() + COUNT, y);
    sheet.text(end, count + " ×", TextStyle.STRONG, Anchor.END, COUNT);
    sheet.text(end.plus(2, 0), name, TextStyle.BODY, box.width() - COUNT - 2);
  }

  /** A sentence as long as it needs to be. */
  void remark(String sentence) {
    for (String line : TextStyle.QUIET.wording().wrap(sentence, box.width())) {
      y += Table.PITCH;
      sheet.text(new Spot(box.left(), y), line, TextStyle.QUIET, box.width());
    }
  }
}
