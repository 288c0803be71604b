package shelfful.drawing;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Upright bars side by side, each with its figure over it and its name under it, and a tick where a
 * limit lies. The scale begins at 0, so that bars are as long as what they say.
 */
final class BarChart {
  private static final double HEADING = 6;
  private static final double NAMES = 9;
  private static final double FIGURES = 5;
  private static final double WIDEST = 16;

  private final SheetDraft sheet;
  private final Box box;

  BarChart(SheetDraft sheet, Box box) {
    this.sheet = sheet;
    this.box = box;
  }

  /**
   * One bar.
   *
   * @param name under it
   * @param value from 0; empty where nothing is known, which draws no bar
   * @param limit a tick over it
   * @param figure written over it
   */
  record Bar(String name, OptionalDouble value, OptionalDouble limit, String figure) {}

  void draw(String title, List<Bar> bars) {
    Spot heading = new Spot(box.left(), box.top() + 4);
    sheet.text(heading, title, TextStyle.SECTION, box.width());
    Box plot =
        new Box(box.left(), box.top() + HEADING + FIGURES, box.right(), box.bottom() - NAMES);
    sheet.line(
        new Spot(plot.left(), plot.bottom()), new Spot(plot.right(), plot.bottom()), Pen.THIN);
    if (bars.stream().allMatch(bar -> bar.value().isEmpty())) {
      sheet.text(plot.centre(), "nothing known yet", TextStyle.QUIET, Anchor.MIDDLE, box.width());
      return;
    }
    double most = bars.stream().mapToDouble(BarChart::most).max().orElse(1);
    double pitch = Math.min(WIDEST, plot.width() / bars.size());
    for (int i = 0; i < bars.size(); i++) {
      bar(bars.get(i), plot, plot.left() + i * pitch, pitch, most > 0 ? most : 1);
    }
  }

  private static double most(Bar bar) {
    return Math.max(bar.value().orElse(0), bar.limit().orElse(0));
  }

  private void bar(Bar bar, Box plot, double left, double pitch, double most) {
    double middle = left + pitch / 2;
    double half = 0.36 * pitch;
    if (bar.value().isPresent()) {
      double top = plot.bottom() - plot.height() * bar.value().getAsDouble() / most;
      Box filled =
          new Box(middle - half, Math.min(top, plot.bottom() - 0.1), middle + half, plot.bottom());
      sheet.box(filled, Look.of(Pen.THIN, Ink.PALE));
      sheet.text(
          new Spot(middle, plot.bottom() - 1.5),
          bar.figure(),
          TextStyle.SMALL,
          Anchor.MIDDLE,
          pitch);
    }
    if (bar.limit().isPresent()) {
      double y = plot.bottom() - plot.height() * bar.limit().getAsDouble() / most;
      sheet.line(new Spot(middle - half, y), new Spot(middle + half, y), Pen.OUTLINE);
      String figure = String.format(Locale.ROOT, "%.0f", bar.limit().getAsDouble());
      sheet.text(new Spot(middle, y - 1), figure, TextStyle.QUIET, Anchor.MIDDLE, pitch);
    }
    sheet.text(
        new Spot(middle, plot.bottom() + 4),
        bar.name(),
        TextStyle.SMALL,
        Anchor.MIDDLE,
        pitch - 0.5);
  }
}
