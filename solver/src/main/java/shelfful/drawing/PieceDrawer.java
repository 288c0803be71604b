package shelfful.drawing;

import java.util.Comparator;
import java.util.List;
import shelfful.ware.Outline;

/**
 * The pieces of one layer from above: widest outline strong, foot thin and dashed, handles,
 * catchers, the glaze as hatching, the number and, where it fits, the form's name.
 */
final class PieceDrawer {
  private static final Pen LUG = Pen.solid(0.35, Ink.BLACK);
  private static final Pen CATCHER = Pen.dashed(0.35, Ink.BLACK, 2.4, 1.2);
  private static final double PADDING = 0.5;

  /** Half the width on paper of a piece too small for its number to be read on hatching. */
  private static final double LEAST_HATCHED = 3.6;

  private final SheetDraft sheet;
  private final PlanView view;
  private final Shapes shapes;
  private final GlazePalette palette;

  PieceDrawer(SheetDraft sheet, PlanView view, GlazePalette palette) {
    this.sheet = sheet;
    this.view = view;
    this.shapes = new Shapes(view);
    this.palette = palette;
  }

  /**
   * Fills first, low ware before tall, then every outline, so that a cup under a flare stays
   * visible.
   */
  void draw(List<SetPiece> pieces) {
    pieces.stream()
        .sorted(Comparator.comparing(piece -> piece.ware().height()))
        .forEach(this::fill);
    pieces.forEach(this::outline);
    pieces.forEach(this::label);
  }

  private void fill(SetPiece piece) {
    GlazeSign sign = palette.of(piece);
    if (piece.placement().onCatcher()) {
      sheet.add(shapes.outline(piece.ware().foot(), piece, Look.filled(Ink.WHITE)));
    }
    piece
        .ware()
        .lugs()
        .forEach(lug -> sheet.add(shapes.lug(lug, piece, Look.of(LUG, sign.tint()))));
    if (fits(piece, 2 * LEAST_HATCHED, 0)) {
      sign.fill(sheet, shapes.corners(piece.body(), piece));
    } else {
      sheet.add(shapes.outline(piece.body(), piece, Look.filled(sign.tint())));
    }
  }

  private void outline(SetPiece piece) {
    if (piece.placement().onCatcher()) {
      sheet.add(shapes.outline(piece.ware().foot(), piece, Look.outlined(CATCHER)));
    }
    Outline widest = piece.body();
    if (!piece.bare().foot().equals(widest) && fits(piece, 2 * LEAST_HATCHED, 0)) {
      sheet.add(shapes.outline(piece.bare().foot(), piece, Look.outlined(Pen.FOOT)));
    }
    sheet.add(shapes.outline(widest, piece, Look.outlined(Pen.OUTLINE)));
  }

  private void label(SetPiece piece) {
    String number = Integer.toString(piece.number());
    String letter = palette.of(piece).letter();
    Wording small = TextStyle.SMALL.wording();
    String name = small.clean(piece.form().name());
    double top = widthOf(number, letter);
    double line = TextStyle.SMALL.pitch();
    if (fits(piece, Math.max(top, small.width(name)), 2 * line)) {
      Spot at = view.at(piece.placement().at()).plus(0, line / 2 + 1);
      boolean free = sheet.isFree(wordBox(at, small.width(name)));
      if (place(piece, number, letter, free ? -line / 2 : 0) && free) {
        knockOut(at, small.width(name));
        sheet.text(at, name, TextStyle.SMALL, Anchor.MIDDLE, small.width(name) + 1);
      }
    } else if (fits(piece, top, line)) {
      place(piece, number, letter, 0);
    } else {
      place(piece, number, "", 0);
    }
  }

  private boolean fits(SetPiece piece, double width, double height) {
    return shapes.holds(piece.body(), piece.placement().turn(), width, height);
  }

  private static double widthOf(String number, String letter) {
    double width = TextStyle.STRONG.wording().width(number);
    return letter.isEmpty() ? width : width + 1 + TextStyle.SMALL.wording().width(letter);
  }

  /** Number and letter side by side about the axis; false when other words are already there. */
  private boolean place(SetPiece piece, String number, String letter, double down) {
    double width = widthOf(number, letter);
    Spot middle = view.at(piece.placement().at()).plus(0, down + 1);
    Spot left = middle.plus(-width / 2, 0);
    if (!sheet.isFree(wordBox(middle, width))) {
      return false;
    }
    if (fits(piece, width, 3.6)) {
      knockOut(middle, width);
    }
    double end = sheet.text(left, number, TextStyle.STRONG);
    if (!letter.isEmpty()) {
      sheet.text(new Spot(end + 1, left.y()), letter, TextStyle.SMALL);
    }
    return true;
  }

  private static Box wordBox(Spot middle, double width) {
    return new Box(
        middle.x() - width / 2, middle.y() - 2.6, middle.x() + width / 2, middle.y() + 0.9);
  }

  /** A white patch under words, so that hatching does not run through them. */
  private void knockOut(Spot middle, double width) {
    double half = width / 2 + PADDING;
    sheet.box(
        new Box(middle.x() - half, middle.y() - 2.6, middle.x() + half, middle.y() + 0.8),
        Look.filled(Ink.WHITE));
  }
}
