package shelfful.drawing;

import java.util.List;

/** Signs of work by hand over the ware of a layer: what may not stand, and what is pinned. */
final class HandMarks {
  private static final Ink WARNING = new Ink(176, 32, 16);
  private static final Pen STROKES = Pen.solid(0.5, WARNING);
  private static final Pen EDGE = Pen.dashed(1.1, WARNING, 3, 1.6);
  private static final double HEAD = 1.7;

  private final SheetDraft sheet;
  private final PlanView view;

  HandMarks(SheetDraft sheet, PlanView view) {
    this.sheet = sheet;
    this.view = view;
  }

  /** Crossed strokes all over and a heavy broken edge: to be told without any colour. */
  void forbidden(SetPiece piece) {
    Shapes shapes = new Shapes(view);
    List<Spot> corners = shapes.corners(piece.widest(), piece);
    List<Mark.Hatching.Line> strokes = Hatch.DIAMONDS.strokes(corners);
    if (!strokes.isEmpty()) {
      sheet.add(new Mark.Hatching(strokes, STROKES));
    }
    sheet.add(shapes.outline(piece.widest(), piece, Look.outlined(EDGE)));
  }

  /** A nail through the edge, at the right and behind. */
  void pin(SetPiece piece) {
    Spot middle = view.at(piece.placement().at());
    double out =
        0.5
            * view.onPaper(
                Math.min(piece.body().width().millimetres(), piece.body().depth().millimetres())
                    / 2);
    Spot tip = middle.plus(out, -out);
    Spot head = tip.plus(2.4, -2.4);
    sheet.line(tip, head, Pen.solid(0.9, Ink.WHITE));
    sheet.line(tip, head, Pen.solid(0.5, Ink.BLACK));
    sheet.add(new Mark.Circle(head, HEAD, Look.of(Pen.solid(0.5, Ink.WHITE), Ink.BLACK)));
  }
}
