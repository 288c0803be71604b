package shelfful.inspect;

import java.util.List;
import shelfful.measure.Length;

/**
 * Figures of a piece against the shelves it does not stand on and against the lid.
 *
 * @param piece at the place asked about
 * @param tolerance of its height, with those of all that carries it
 */
record PlaceHeights(Setting setting, StandingPiece piece, long tolerance) {

  void add(List<PlaceFigure> figures) {
    for (LaidShelf shelf : setting.shelves()) {
      if (shelf != piece.shelf() && shelf.top() > piece.shelf().top()) {
        shelf(shelf, figures);
      }
    }
    lid(figures);
  }

  /** A part that is neither under nor over a slab has to be beside it. */
  private void shelf(LaidShelf shelf, List<PlaceFigure> figures) {
    long headroom = setting.clearances().headroom().micrometres() + tolerance;
    for (PiecePart part : piece.parts()) {
      boolean under = shelf.underside() >= part.heights().top() + headroom;
      boolean over = shelf.top() <= part.heights().bottom();
      if (under || over) {
        continue;
      }
      Approach beside = Approach.between(part.footprint(), shelf.footprint());
      PlaceFigure figure =
          PlaceJudge.figure(Rule.PIECE_HITS_SHELF, shelf.id(), beside, piece.tolerance());
      boolean meets = part.heights().shares(shelf.heights());
      if (figure.holds() || meets) {
        if (figure.measured().micrometres() <= PlaceJudge.NEAR) {
          figures.add(figure);
        }
      } else {
        long above = shelf.underside() - part.heights().top();
        figures.add(height(Rule.PIECE_TALLER_THAN_HEADROOM_ALLOWS, shelf.id(), above, headroom));
      }
    }
  }

  private void lid(List<PlaceFigure> figures) {
    long required = setting.clearances().underLid().micrometres() + tolerance;
    long over = setting.chamberHeight() - piece.top();
    if (over < required) {
      figures.add(height(Rule.PIECE_TOO_CLOSE_TO_LID, "", over, required));
    }
  }

  private PlaceFigure height(Rule rule, String other, long measured, long required) {
    return new PlaceFigure(
        rule,
        other,
        new Length(measured),
        new Length(required),
        measured >= required,
        new PlaceFigure.Line(piece.placement().at(), piece.placement().at(), 0, 0));
  }
}
