package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A sheet while it is being drawn: collects marks and knows where words already stand. */
final class SheetDraft {
  private static final double NO_LIMIT = 1000;

  private final PaperSize paper;
  private final Optional<String> layerId;
  private final List<Mark> marks = new ArrayList<>();
  private Optional<PlanView> plan = Optional.empty();

  SheetDraft(PaperSize paper, Optional<String> layerId) {
    this.paper = paper;
    this.layerId = layerId;
  }

  Box body() {
    return paper.body();
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
    return new Sheet(width, height, layerId, plan, marks);
  }

  /** Ends the draft with its foot line. */
  Sheet finish(String about, int page, int pages) {
    double y = paper.height() - PaperSize.MARGIN - 1;
    Box body = body();
    String number = "page " + page + " of " + pages;
    line(new Spot(body.left(), y - 4), new Spot(body.right(), y - 4), Pen.RULE);
    text(new Spot(body.left(), y), about, TextStyle.QUIET, body.width() - 40);
    text(new Spot(body.right(), y), number, TextStyle.SMALL_STRONG, Anchor.END, 38);
    return new Sheet(paper.width(), paper.height(), layerId, plan, marks);
  }
}
