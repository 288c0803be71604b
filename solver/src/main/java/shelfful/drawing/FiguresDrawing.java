package shelfful.drawing;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import shelfful.figures.FiringFigures;
import shelfful.figures.PotteryFigures;

/** The figures of past firings on one sheet: pieces and limit, cost of a piece, what was wrong. */
public final class FiguresDrawing {
  /** The latest firings, as many as have room for their figures side by side. */
  private static final int MOST_FIRINGS = 16;

  private FiguresDrawing() {}

  /**
   * Draws them on upright paper; of many firings the latest, of many causes the commonest that have
   * room.
   *
   * @param name of the pottery, for the head of the sheet
   */
  public static LoadDrawing of(PotteryFigures figures, String name, PaperSize paper) {
    Pages pages = new Pages(SheetFormat.upright(paper));
    SheetDraft sheet = pages.open();
    Box body = sheet.body();
    List<FiringFigures> all = figures.firings();
    List<FiringFigures> latest = all.subList(Math.max(0, all.size() - MOST_FIRINGS), all.size());
    sheet.text(new Spot(body.left(), body.top() + 7), name, TextStyle.TITLE, body.width());
    sheet.text(
        new Spot(body.left(), body.top() + 13),
        shown(latest.size(), all.size()),
        TextStyle.SUBHEAD,
        body.width());
    double third = (body.height() - 24) / 3;
    double top = body.top() + 18;
    chart(sheet, body, top, third)
        .draw(
            "Pieces in each firing; the line is what no setting could exceed",
            latest.stream().map(FiguresDrawing::pieces).toList());
    chart(sheet, body, top + third, third)
        .draw("Cost of a piece", latest.stream().map(FiguresDrawing::cost).toList());
    new CauseBars(sheet, part(body, top + 2 * third, third)).draw(figures.causes());
    return new LoadDrawing("Figures", pages.finish("Figures of past firings", ""));
  }

  private static String shown(int latest, int all) {
    return latest == all
        ? (all == 1 ? "The one firing kept" : "All " + all + " firings kept")
        : "The latest " + latest + " of " + all;
  }

  private static BarChart chart(SheetDraft sheet, Box body, double top, double height) {
    return new BarChart(sheet, part(body, top, height));
  }

  private static Box part(Box body, double top, double height) {
    return new Box(body.left(), top, body.right(), top + height - 4);
  }

  private static BarChart.Bar pieces(FiringFigures one) {
    OptionalDouble limit =
        one.limit().isPresent() ? OptionalDouble.of(one.limit().get()) : OptionalDouble.empty();
    return new BarChart.Bar(
        day(one), OptionalDouble.of(one.pieces()), limit, Integer.toString(one.pieces()));
  }

  private static BarChart.Bar cost(FiringFigures one) {
    OptionalDouble cost = one.costPerPiece();
    String figure = cost.isPresent() ? String.format(Locale.ROOT, "%.2f", cost.getAsDouble()) : "";
    return new BarChart.Bar(day(one), cost, OptionalDouble.empty(), figure);
  }

  private static String day(FiringFigures one) {
    return String.format(
        Locale.ROOT, "%02d-%02d", one.day().getMonthValue(), one.day().getDayOfMonth());
  }
}
