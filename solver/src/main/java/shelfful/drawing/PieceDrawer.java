package shelfful.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shelfful.ware.Outline;
import shelfful.ware.PileWay;

/**
 * The pieces of one layer from above: widest outline strong, foot thin and dashed, handles,
 * catchers, the glaze as hatching, the number and, where it fits, the form's name.
 */
final class PieceDrawer {
  private static final Pen LUG = Pen.solid(0.35, Ink.BLACK);
  private static final Pen CATCHER = Pen.dashed(0.35, Ink.BLACK, 2.4, 1.2);

  /** Half the width on paper of a piece too small for its number to be read on hatching. */
  private static final double LEAST_HATCHED = 3.2;

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
    labels(pieces);
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
    inside(piece);
    sheet.add(shapes.outline(widest, piece, Look.outlined(Pen.OUTLINE)));
  }

  /** What stands inside another is seen from above, so its own outline is drawn. */
  private void inside(SetPiece piece) {
    for (SetPiece upper : piece.above()) {
      boolean isInside = upper.placement().rest().way().equals(Optional.of(PileWay.INSIDE));
      if (isInside && fits(piece, 2 * LEAST_HATCHED, 0)) {
        sheet.add(shapes.outline(upper.body(), upper, Look.outlined(Pen.THIN)));
      }
    }
  }

  /** The glaze's letter, and of a pile how many it is of. */
  private String letter(SetPiece piece) {
    return (palette.of(piece).letter() + " " + PileWords.sign(piece)).strip();
  }

  /**
   * Room is taken for the longest number and letter of the layer, so that like pieces have words of
   * one size.
   */
  void labels(List<SetPiece> pieces) {
    int most = pieces.stream().mapToInt(SetPiece::number).max().orElse(0);
    String digits = "8".repeat(Integer.toString(most).length());
    String letter =
        pieces.stream()
            .map(this::letter)
            .max(Comparator.comparingDouble(TextStyle.SMALL.wording()::width))
            .orElse("");
    for (SetPiece piece : pieces) {
      new PieceLabel(sheet, view, piece, new PieceLabel.Longest(digits, letter))
          .draw(piece.number(), letter(piece), PileWords.forms(piece));
    }
  }

  private boolean fits(SetPiece piece, double width, double height) {
    return shapes.holds(piece.body(), piece.placement().turn(), width, height);
  }
}
