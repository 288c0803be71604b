package shelfful.inspect;

import java.util.List;
import java.util.Locale;

/**
 * The whole foot stands on its shelf, of a pile the lowest; the body stays over it where the house
 * says so.
 */
final class FootCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (StandingPiece piece : setting.pieces()) {
      if (piece.isOnShelf()) {
        foot(setting, piece, findings);
      }
      if (!setting.rules().bellyMayPassEdge()) {
        body(setting, piece, findings);
      }
    }
  }

  private static void foot(Setting setting, StandingPiece piece, Findings findings) {
    long required = setting.clearances().footToShelfEdge().micrometres() + piece.tolerance();
    Reading depth = piece.shelf().room().depth(piece.foot(), required);
    if (!depth.reaches(required)) {
      Wording wording = setting.wording();
      findings.add(
          Rule.FOOT_OVER_EDGE,
          piece.layerId(),
          List.of(piece.id()),
          String.format(
              Locale.ROOT,
              "The distance of the %s of %s from the shelf's edge is %s. Move it %s inwards.",
              below(piece),
              piece.id(),
              wording.butNeeds(depth.whole(), required),
              wording.missing(depth.whole(), required)));
    }
  }

  private static String below(StandingPiece piece) {
    if (piece.placement().onCatcher()) {
      return "catcher";
    }
    return piece.placement().rest().upsideDown() ? "rim" : "foot";
  }

  private static void body(Setting setting, StandingPiece piece, Findings findings) {
    long required = piece.tolerance();
    Reading least = Reading.UNLIMITED;
    for (PiecePart part : piece.parts()) {
      least = least.orLess(piece.shelf().room().depth(part.footprint(), required));
    }
    if (!least.reaches(required)) {
      Wording wording = setting.wording();
      findings.add(
          Rule.BODY_OVER_EDGE,
          piece.layerId(),
          List.of(piece.id()),
          String.format(
              Locale.ROOT,
              "The distance that %s keeps inside of its shelf's edge is %s. Move it %s inwards.",
              piece.id(),
              wording.butNeeds(least.whole(), required),
              wording.missing(least.whole(), required)));
    }
  }
}
