package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;

/** Outlines of ware and posts cut to one page, without fillings. */
record Outlines(SheetDraft sheet, PlanView view, ViewClip clip) {
  private static final int STEP = 2;
  private static final Pen BODY = Pen.solid(0.5, Ink.BLACK);
  private static final Pen LUG = Pen.solid(0.3, Ink.BLACK);
  private static final Pen POST = Pen.dashed(0.4, Ink.BLACK, 1.2, 1.2);
  private static final double MIDDLE = 2;

  void piece(SetPiece piece) {
    Shapes shapes = new Shapes(view);
    piece.bare().lugs().forEach(lug -> run(shapes.corners(lug, piece), LUG));
    if (!piece.ware().foot().equals(piece.body())) {
      run(shapes.corners(piece.ware().foot(), piece, STEP), Pen.FOOT);
    }
    run(shapes.corners(piece.body(), piece, STEP), BODY);
    Spot axis = view.at(piece.placement().at());
    cross(axis);
  }

  /** A small cross on the axis, where it is on this page. */
  private void cross(Spot axis) {
    if (clip.box().holds(Box.about(axis, MIDDLE))) {
      sheet.line(axis.plus(-MIDDLE, 0), axis.plus(MIDDLE, 0), LUG);
      sheet.line(axis.plus(0, -MIDDLE), axis.plus(0, MIDDLE), LUG);
    }
  }

  void post(PostMark post) {
    Spot middle = view.at(post.at());
    List<Spot> corners = new ArrayList<>();
    for (int degrees = 0; degrees < 360; degrees += STEP) {
      double angle = Math.toRadians(degrees);
      double radius = post.across() / 2;
      corners.add(middle.plus(radius * Math.cos(angle), -radius * Math.sin(angle)));
    }
    run(corners, POST);
    words(middle.plus(0, 1), post.label(), TextStyle.STRONG);
  }

  void run(List<Spot> closed, Pen pen) {
    for (List<Spot> run : clip.runs(closed)) {
      sheet.add(new Mark.Path(run, false, Look.outlined(pen)));
    }
  }

  /** Number, glaze and name, over and under the cross. */
  void label(SetPiece piece, String letter) {
    Spot axis = view.at(piece.placement().at());
    words(axis.plus(0, -3.2), (piece.number() + " " + letter).strip(), TextStyle.HEAD);
    double most = Math.max(10, piece.body().width().millimetres() - 8);
    words(axis.plus(0, 6), TextStyle.SMALL.wording().fit(piece.name(), most), TextStyle.SMALL);
  }

  private void words(Spot middle, String told, TextStyle style) {
    double width = style.wording().width(style.wording().clean(told));
    double unit = style.size() * Typeface.MILLIMETRES_PER_POINT;
    Box box =
        new Box(
            middle.x() - width / 2,
            middle.y() - 0.8 * unit,
            middle.x() + width / 2,
            middle.y() + 0.3 * unit);
    if (clip.box().holds(box) && sheet.isFree(box)) {
      sheet.text(middle, told, style, Anchor.MIDDLE, width + 1);
    }
  }
}
