package shelfful.inspect;

import java.util.List;
import java.util.Locale;

/** Ware keeps clear of the wall at every height; shelves and posts lie within it. */
final class WallCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Room chamber = setting.chamber();
    for (StandingPiece piece : setting.pieces()) {
      piece(setting, chamber, piece, findings);
    }
    Wording wording = setting.wording();
    for (LaidShelf shelf : setting.shelves()) {
      if (!chamber.holds(shelf.footprint(), 0)) {
        long past = -chamber.depth(shelf.footprint(), 0).whole();
        findings.add(
            Rule.SHELF_TOO_CLOSE_TO_WALL,
            shelf.id(),
            String.format(
                Locale.ROOT,
                "The shelf of layer %s reaches %s past the chamber's wall. Use a smaller shelf or move its place.",
                shelf.id(),
                wording.length(past)));
      }
    }
    for (StoodPost post : setting.posts()) {
      if (!chamber.holds(post.footprint(), 0)) {
        findings.add(
            Rule.SHELF_TOO_CLOSE_TO_WALL,
            String.format(
                Locale.ROOT,
                "The post at x %s, y %s reaches past the chamber's wall. Stand it farther in.",
                wording.length(post.footprint().x()),
                wording.length(post.footprint().y())));
      }
    }
  }

  private static void piece(Setting setting, Room chamber, StandingPiece piece, Findings findings) {
    long required = setting.clearances().wareToWall().micrometres() + piece.tolerance();
    Reading least = Reading.UNLIMITED;
    for (PiecePart part : piece.parts()) {
      least = least.orLess(chamber.depth(part.footprint(), required));
    }
    if (!least.reaches(required)) {
      Wording wording = setting.wording();
      findings.add(
          Rule.PIECE_TOO_CLOSE_TO_WALL,
          piece.layerId(),
          List.of(piece.id()),
          String.format(
              Locale.ROOT,
              "The distance of %s from the wall is %s. Move it %s inwards.",
              piece.id(),
              wording.butNeeds(least.whole(), required),
              wording.missing(least.whole(), required)));
    }
  }
}
