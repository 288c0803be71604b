package shelfful.drawing;

import java.util.List;
import java.util.Map;
import shelfful.record.Grade;

/**
 * How pieces came out, over the ware of a layer: a disc with a letter at the edge of each piece
 * that was looked at, and over flawed ones strokes besides, so that nothing is told by colour. A
 * second has rising strokes, a lost piece crossed ones.
 */
final class GradeMarks {
  private static final Pen STROKES = Pen.solid(0.7, Ink.BLACK);
  private static final Pen RIM = Pen.solid(0.5, Ink.BLACK);
  private static final double DISC = 2.6;
  private static final double BASE_LINE = 1.05;

  /** Where the disc lies between the middle and the edge, at the left and behind. */
  private static final double OUT = 0.62;

  private final SheetDraft sheet;
  private final PlanView view;
  private final Map<Grade, String> letters;

  /**
   * Prepares.
   *
   * @param letters one for each grade, in the reader's language
   */
  GradeMarks(SheetDraft sheet, PlanView view, Map<Grade, String> letters) {
    this.sheet = sheet;
    this.view = view;
    this.letters = letters;
  }

  /** The strokes over a flawed piece; none over a good one. */
  void strokes(SetPiece piece, Grade grade) {
    if (grade.isFlawed()) {
      Hatch hatch = grade == Grade.LOST ? Hatch.DIAMONDS : Hatch.RISING;
      List<Spot> corners = new Shapes(view).corners(piece.body(), piece);
      List<Mark.Hatching.Line> strokes = hatch.strokes(corners);
      if (!strokes.isEmpty()) {
        sheet.add(new Mark.Hatching(strokes, STROKES));
      }
    }
  }

  /** The disc, clear of the number in the middle. */
  void letter(SetPiece piece, Grade grade) {
    double half =
        view.onPaper(
            Math.min(piece.body().width().millimetres(), piece.body().depth().millimetres()) / 2);
    double out = OUT * half;
    Spot at = view.at(piece.placement().at()).plus(-out, -out);
    boolean lost = grade == Grade.LOST;
    sheet.add(new Mark.Circle(at, DISC, Look.of(RIM, lost ? Ink.BLACK : Ink.WHITE)));
    sheet.text(
        at.plus(0, BASE_LINE),
        letters.get(grade),
        lost ? TextStyle.REVERSED : TextStyle.SMALL_STRONG,
        Anchor.MIDDLE,
        2 * DISC);
  }
}
