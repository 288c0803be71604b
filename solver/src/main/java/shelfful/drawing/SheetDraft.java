package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A sheet while it is being drawn: collects marks and knows where words already stand. */
final class SheetDraft {
  private static final double NO_LIMIT = 1000;
  private static final double FOOT_GAP = 5;

  private final SheetFormat format;
  private final List<String> layerIds;
  private final List<Mark> marks = new ArrayList<>();
  private Optional<PlanView> plan = Optional.empty();

  SheetDraft(SheetFormat format, List<String> layerIds) {
    this.format = format;
    this.layerIds = layerIds;
  }

  Box body() {
    return format.body();
  }

  void shows(PlanView view) {
    plan = Optional.of(view);
  }

  void add(Mark mark) {
    marks.add(mark);
  }

  void line(Spot from, Spot to, Pen pen) {
    marks.add(new Mark.Line(from, to, pen));
  }

  void box(Box box, Look look) {
    List<Spot> corners =
        List.of(
            new Spot(box.left(), box.top()),
            new Spot(box.right(), box.top()),
            new Spot(box.right(), box.bottom()),
            new Spot(box.left(), box.bottom()));
    marks.add(new Mark.Path(corners, true, look));
  }

  /** Words starting at a spot, shortened to a width; returns where they end. */
  double text(Spot at, String words, TextStyle style, double most) {
    return text(at, words, style, Anchor.START, most);
  }

  /** Words at a spot, shortened to a width; returns their measured width plus the spot's x. */
  double text(Spot at, String words, TextStyle style, Anchor anchor, double most) {
    Wording wording = style.wording();
    String fitted = wording.fit(words, most).replace(Wording.TIED, ' ');
    double width = wording.width(fitted);
    if (!fitted.isEmpty()) {
      marks.add(
          new Mark.Text(at, fitted, style.size(), style.weight(), anchor, width, style.ink()));
    }
    return at.x() + width;
  }

  double text(Spot at, String words, TextStyle style) {
    return text(at, words, style, NO_LIMIT);
  }

  /** Whether no words stand in a box yet. */
  boolean isFree(Box box) {
    return marks.stream()
        .noneMatch(mark -> mark instanceof Mark.Text text && text.box().overlaps(box));
  }

  /** Ends the draft as a picture of its own size, without a foot line. */
  Sheet picture(double width, double height) {
    return new Sheet(width, height, layerIds, plan, marks);
  }

  /** Ends the draft with its foot line: what it belongs to, and which page of which printing. */
  Sheet finish(String about, String edition, int page, int pages) {
    double y = format.height() - PaperSize.MARGIN - 1;
    Box body = body();
    String number = "page " + page + " of " + pages;
    line(new Spot(body.left(), y - 4), new Spot(body.right(), y - 4), Pen.RULE);
    double numberWidth = TextStyle.SMALL_STRONG.wording().width(number);
    text(new Spot(body.right(), y), number, TextStyle.SMALL_STRONG, Anchor.END, numberWidth + 1);
    double end = body.right() - numberWidth - FOOT_GAP;
    double most = body.width() / 2;
    double told = text(new Spot(end, y), edition, TextStyle.QUIET, Anchor.END, most) - end;
    double left = end - told - FOOT_GAP - body.left();
    text(new Spot(body.left(), y), about, TextStyle.QUIET, left);
    return new Sheet(format.width(), format.height(), layerIds, plan, marks);
  }
}
