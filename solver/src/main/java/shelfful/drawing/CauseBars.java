package shelfful.drawing;

import java.util.List;
import shelfful.figures.CauseCount;

/** What was wrong with pieces: a row for each cause, seconds pale and lost pieces dark. */
final class CauseBars {
  private static final double HEADING = 6;
  private static final double PITCH = 6;
  private static final double NAME = 52;
  private static final double FIGURE = 30;

  private final SheetDraft sheet;
  private final Box box;

  CauseBars(SheetDraft sheet, Box box) {
    this.sheet = sheet;
    this.box = box;
  }

  void draw(List<CauseCount> causes) {
    sheet.text(
        new Spot(box.left(), box.top() + 4),
        "What was wrong: seconds pale, lost pieces dark",
        TextStyle.SECTION,
        box.width());
    int most = causes.stream().mapToInt(CauseCount::all).max().orElse(1);
    int rows = (int) Math.min(causes.size(), (box.height() - HEADING) / PITCH);
    for (int row = 0; row < rows; row++) {
      row(causes.get(row), box.top() + HEADING + (row + 1) * PITCH, most);
    }
    if (causes.isEmpty()) {
      sheet.text(
          new Spot(box.left(), box.top() + HEADING + PITCH), "nothing", TextStyle.QUIET, NAME);
    }
  }

  private void row(CauseCount cause, double y, int most) {
    double left = box.left() + NAME + 2;
    double unit = (box.width() - NAME - FIGURE) / most;
    sheet.text(new Spot(box.left(), y), cause.cause(), TextStyle.BODY, NAME);
    double seconds = left + unit * cause.seconds();
    double end = seconds + unit * cause.lost();
    if (cause.seconds() > 0) {
      sheet.box(new Box(left, y - 3.6, seconds, y), Look.of(Pen.THIN, Ink.PALE));
    }
    if (cause.lost() > 0) {
      sheet.box(new Box(seconds, y - 3.6, end, y), Look.of(Pen.THIN, Ink.MIDDLE));
    }
    String figure = cause.all() + " (" + cause.lost() + " lost)";
    sheet.text(new Spot(end + 2, y), figure, TextStyle.BODY, FIGURE - 4);
  }
}
