package shelfful.inspect;

import java.util.List;
import java.util.Locale;

/** Ware keeps clear of every post that it shares a height with, of whichever column. */
final class PostClearanceCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (StandingPiece piece : setting.pieces()) {
      long required = setting.clearances().wareToPost().micrometres() + piece.tolerance();
      double reach = piece.reach() + required + 2 * Reading.TOLERANCE;
      for (StoodPost post : setting.posts()) {
        Disc disc = post.footprint();
        boolean near = post.middle().minus(piece.axis()).length() <= reach + disc.radius();
        if (near && post.heights().shares(piece.heights())) {
          judge(setting, piece, post, required, findings);
        }
      }
    }
  }

  private static void judge(
      Setting setting, StandingPiece piece, StoodPost post, long required, Findings findings) {
    Reading gap = Obstruction.gap(piece, post.footprint(), post.heights(), required);
    if (!gap.reaches(required)) {
      Wording wording = setting.wording();
      findings.add(
          Rule.PIECE_TOO_CLOSE_TO_POST,
          piece.layerId(),
          List.of(piece.id()),
          String.format(
              Locale.ROOT,
              "The distance of %s from the post at x %s, y %s is %s. Move it %s away.",
              piece.id(),
              wording.length(post.footprint().x()),
              wording.length(post.footprint().y()),
              wording.butNeeds(gap.whole(), required),
              wording.missing(gap.whole(), required)));
    }
  }
}
