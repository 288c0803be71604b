package shelfful.inspect;

import java.util.List;
import java.util.Locale;

/**
 * Ware and the shelves it does not stand on: every part that shares a height with a slab stays
 * beside it, every part that a slab is over has the headroom up to it.
 */
final class HeadroomCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Carriers carriers = Carriers.of(setting.pieces());
    for (StandingPiece piece : setting.pieces()) {
      long headroom = setting.clearances().headroom().micrometres();
      long required = headroom + carriers.heightTolerance(piece);
      for (LaidShelf shelf : setting.shelves()) {
        boolean farAbove = shelf.underside() >= piece.top() + required;
        boolean below = shelf.top() <= piece.shelf().top();
        if (shelf != piece.shelf() && !farAbove && !below && !isBeside(piece, shelf)) {
          judge(setting, piece, shelf, required, findings);
        }
      }
    }
  }

  private static boolean isBeside(StandingPiece piece, LaidShelf shelf) {
    Footprint slab = shelf.footprint();
    double between = slab.middle().minus(piece.axis()).length() - slab.reach();
    return between > piece.reach() + piece.tolerance() + 2 * Reading.TOLERANCE;
  }

  private static void judge(
      Setting setting, StandingPiece piece, LaidShelf shelf, long required, Findings findings) {
    long least = Long.MAX_VALUE;
    boolean hits = false;
    for (PiecePart part : piece.parts()) {
      if (isClear(part, shelf, required, piece.tolerance())) {
        continue;
      }
      if (part.heights().shares(shelf.heights())) {
        hits = true;
      } else {
        least = Math.min(least, shelf.underside() - part.heights().top());
      }
    }
    Wording wording = setting.wording();
    if (hits) {
      findings.add(
          Rule.PIECE_HITS_SHELF,
          piece.layerId(),
          List.of(piece.id()),
          String.format(
              Locale.ROOT,
              "%s reaches from %s to %s and meets the shelf of layer %s between them. Move it away or set it lower.",
              piece.id(),
              wording.length(piece.heights().bottom()),
              wording.length(piece.top()),
              shelf.id()));
    }
    if (least < required) {
      findings.add(
          Rule.PIECE_TALLER_THAN_HEADROOM_ALLOWS,
          piece.layerId(),
          List.of(piece.id()),
          String.format(
              Locale.ROOT,
              "The headroom of %s under the shelf of layer %s is %s. Use posts at least %s longer, or lower ware.",
              piece.id(),
              shelf.id(),
              wording.butNeeds(least, required),
              wording.missing(least, required)));
    }
  }

  /** Whether a part is under the slab with room to spare, over it, or beside it in the plan. */
  private static boolean isClear(PiecePart part, LaidShelf shelf, long headroom, long tolerance) {
    return shelf.underside() >= part.heights().top() + headroom
        || shelf.top() <= part.heights().bottom()
        || Gap.isAtLeast(part.footprint(), shelf.footprint(), tolerance);
  }
}
