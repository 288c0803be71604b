package shelfful.drawing;

import shelfful.measure.Length;
import shelfful.measure.LengthUnit;

/**
 * A bar of known length on paper, so that anyone with a ruler can tell whether the printer kept the
 * scale: 50 mm, or 2 in for people who read inches.
 */
final class ScaleBar {
  static final Length METRIC = Length.ofMillimetres(50);
  static final Length INCH = Length.ofInches(2);

  private static final double TICK = 1.6;
  private static final int PARTS = 4;

  private ScaleBar() {}

  /**
   * Draws the bar with its left end at a spot; needs 9 mm below it and about 100 mm to the right.
   */
  static void draw(SheetDraft sheet, Spot at, double ratio, LengthWords words) {
    Length length = words.unit() == LengthUnit.INCHES ? INCH : METRIC;
    double onPaper = length.millimetres();
    sheet.line(at, at.plus(onPaper, 0), Pen.solid(0.4, Ink.BLACK));
    for (int i = 0; i <= PARTS; i++) {
      double tall = i == 0 || i == PARTS ? TICK : TICK / 2;
      Spot tick = at.plus(onPaper * i / PARTS, 0);
      sheet.line(tick.plus(0, -tall), tick, Pen.solid(0.3, Ink.BLACK));
    }
    Length inKiln = Length.ofMillimetres(onPaper * ratio);
    double y = 3.6;
    sheet.text(at.plus(0, y), ScaleChoice.words(ratio), TextStyle.SMALL_STRONG);
    String told = words.full(length) + " on paper = " + words.full(inKiln) + " of kiln";
    sheet.text(at.plus(onPaper + 3, 0.8), told, TextStyle.SMALL);
    sheet.text(
        at.plus(onPaper + 3, y + 0.6),
        "Not this long? The printer changed the scale.",
        TextStyle.QUIET);
  }
}
