package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Lug;
import shelfful.ware.Outline;

/**
 * A form as its numbers say: at the left from above, at the right from the front, both at one
 * scale, at the stage it was measured at.
 */
public final class FormDrawing {
  private static final double EDGE = 3;
  private static final double WORDS = 6;
  private static final Look BODY = Look.of(Pen.OUTLINE, Ink.PALE);
  private static final Look BAND = Look.of(Pen.THIN, Ink.PALE);
  private static final Look LUG = Look.of(Pen.solid(0.35, Ink.BLACK), Ink.WHITE);

  private final Form form;
  private final LengthWords words;
  private final SheetDraft sheet = new SheetDraft(SheetFormat.upright(PaperSize.A4), List.of());
  private final double width;
  private final double height;

  private FormDrawing(Form form, LengthUnit unit, double width, double height) {
    this.form = form;
    this.words = new LengthWords(unit);
    this.width = width;
    this.height = height;
  }

  /**
   * Draws a form.
   *
   * @param unit that figures are written in
   * @param width of the picture in millimetres
   * @param height of the picture in millimetres
   */
  public static Sheet of(Form form, LengthUnit unit, double width, double height) {
    return new FormDrawing(form, unit, width, height).draw();
  }

  private Sheet draw() {
    double half = farthest();
    double tall = form.profile().height().plus(rise()).millimetres();
    double room = width / 2 - 2 * EDGE;
    double ratio =
        Math.max(2 * half / room, Math.max(tall, 2 * half) / (height - 2 * EDGE - 2 * WORDS));
    Spot middle = new Spot(width / 4, EDGE + WORDS + (height - 2 * EDGE - 2 * WORDS) / 2);
    fromAbove(new PlanView(ratio, middle));
    fromFront(new PlanView(ratio, new Spot(3 * width / 4, height - EDGE - WORDS)));
    return sheet.picture(width, height);
  }

  private Length rise() {
    return form.lid().map(lid -> lid.rise()).orElse(Length.ZERO);
  }

  private double farthest() {
    double most = 1;
    for (Band band : form.profile().bands()) {
      Length across = Length.longer(band.outline().width(), band.outline().depth());
      most = Math.max(most, across.millimetres() / 2);
    }
    for (Lug lug : form.profile().lugs()) {
      most = Math.max(most, lug.reach().millimetres());
    }
    return most;
  }

  private void fromAbove(PlanView view) {
    for (Lug lug : form.profile().lugs()) {
      double radius = lug.width().millimetres() / 2;
      double along = lug.reach().millimetres() - radius;
      double angle = lug.direction().radians();
      Spot tip = view.at(along * Math.cos(angle), along * Math.sin(angle));
      sheet.add(new Mark.Capsule(view.at(0, 0), tip, view.onPaper(2 * radius), LUG));
    }
    List<Band> widestFirst = new ArrayList<>(form.profile().bands());
    widestFirst.sort((a, b) -> -a.outline().width().compareTo(b.outline().width()));
    for (int i = 0; i < widestFirst.size(); i++) {
      outline(view, widestFirst.get(i).outline(), i == 0 ? BODY : BAND);
    }
    outline(view, form.profile().foot(), Look.outlined(Pen.FOOT));
    Outline widest = widestFirst.get(0).outline();
    figure(
        new Spot(view.origin().x(), height - EDGE),
        widest instanceof Outline.Round
            ? words.full(widest.width())
            : words.bare(widest.width()) + " × " + words.full(widest.depth()));
  }

  private void outline(PlanView view, Outline outline, Look look) {
    sheet.add(
        new Mark.Oval(
            view.at(0, 0),
            view.onPaper(outline.width().millimetres() / 2),
            view.onPaper(outline.depth().millimetres() / 2),
            0,
            look));
  }

  private void fromFront(PlanView view) {
    for (Lug lug : form.profile().lugs()) {
      double radius = lug.width().millimetres() / 2;
      double tip = (lug.reach().millimetres() - radius) * Math.cos(lug.direction().radians());
      box(
          view,
          new Silhouette.Block(
              Math.min(0, tip) - radius,
              Math.max(0, tip) + radius,
              lug.from().millimetres(),
              lug.to().millimetres()),
          LUG);
    }
    for (Band band : form.profile().bands()) {
      box(view, block(band.outline(), band.from(), band.to()), BODY);
    }
    Length top = form.profile().height();
    form.lid().ifPresent(lid -> box(view, block(lid.outline(), top, top.plus(lid.rise())), BAND));
    double foot = form.profile().foot().width().millimetres() / 2;
    sheet.line(view.at(-foot, 0), view.at(foot, 0), Pen.solid(1.2, Ink.BLACK));
    waxLine(view);
    figure(
        new Spot(view.origin().x(), height - EDGE),
        words.full(form.profile().height().plus(rise())));
  }

  private void waxLine(PlanView view) {
    double up = form.bareFoot().millimetres();
    double half = form.profile().bands().get(0).outline().width().millimetres() / 2;
    if (up > 0) {
      sheet.line(view.at(-half, up), view.at(half, up), Pen.FOOT);
    }
  }

  private static Silhouette.Block block(Outline outline, Length from, Length to) {
    double half = outline.width().millimetres() / 2;
    return new Silhouette.Block(-half, half, from.millimetres(), to.millimetres());
  }

  private void box(PlanView view, Silhouette.Block block, Look look) {
    Spot upper = view.at(block.left(), block.top());
    Spot lower = view.at(block.right(), block.bottom());
    sheet.box(new Box(upper.x(), upper.y(), lower.x(), lower.y()), look);
  }

  private void figure(Spot at, String figure) {
    sheet.text(at, figure, TextStyle.SMALL, Anchor.MIDDLE, width / 2 - EDGE);
  }
}
