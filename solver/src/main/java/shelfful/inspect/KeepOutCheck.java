package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import shelfful.kiln.KeepOut;
import shelfful.measure.Point;

/**
 * Ware keeps clear of every keep-out; no post is in one, and no shelf in one that stops shelves.
 */
final class KeepOutCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (KeepOut keepOut : setting.kiln().keepOuts()) {
      Footprint footprint = footprint(keepOut);
      HeightRange heights = heights(keepOut);
      pieces(setting, keepOut, footprint, heights, findings);
      if (keepOut.kind().stopsShelves()) {
        shelves(setting, keepOut, footprint, heights, findings);
      }
      posts(setting, keepOut, footprint, heights, findings);
    }
  }

  static HeightRange heights(KeepOut keepOut) {
    return new HeightRange(keepOut.bottom().micrometres(), keepOut.top().micrometres());
  }

  static Footprint footprint(KeepOut keepOut) {
    Point from = keepOut.from();
    return from.equals(keepOut.to())
        ? Disc.at(from, keepOut.across())
        : new Bar(Vector.of(from), Vector.of(keepOut.to()), keepOut.across().micrometres() / 2.0);
  }

  private static void pieces(
      Setting setting,
      KeepOut keepOut,
      Footprint footprint,
      HeightRange heights,
      Findings findings) {
    Wording wording = setting.wording();
    for (StandingPiece piece : setting.pieces()) {
      long required = setting.clearances().wareToKeepOut().micrometres() + piece.tolerance();
      Reading gap = Obstruction.gap(piece, footprint, heights, required);
      if (!gap.reaches(required)) {
        findings.add(
            Rule.PIECE_TOO_CLOSE_TO_KEEP_OUT,
            piece.layerId(),
            List.of(piece.id()),
            String.format(
                Locale.ROOT,
                "The distance of %s from the keep-out %s is %s. Move it %s away.",
                piece.id(),
                keepOut.name(),
                wording.butNeeds(gap.whole(), required),
                wording.missing(gap.whole(), required)));
      }
    }
  }

  private static void shelves(
      Setting setting,
      KeepOut keepOut,
      Footprint footprint,
      HeightRange heights,
      Findings findings) {
    for (LaidShelf shelf : setting.shelves()) {
      if (shelf.heights().shares(heights) && !Gap.isAtLeast(shelf.footprint(), footprint, 0)) {
        findings.add(
            Rule.SHELF_MEETS_KEEP_OUT,
            shelf.id(),
            String.format(
                Locale.ROOT,
                "The shelf of layer %s, from %s to %s high, lies in the keep-out %s. Set it at another height.",
                shelf.id(),
                setting.wording().length(shelf.underside()),
                setting.wording().length(shelf.top()),
                keepOut.name()));
      }
    }
  }

  private static void posts(
      Setting setting,
      KeepOut keepOut,
      Footprint footprint,
      HeightRange heights,
      Findings findings) {
    for (StoodPost post : setting.posts()) {
      if (post.heights().shares(heights) && !Gap.isAtLeast(post.footprint(), footprint, 0)) {
        findings.add(
            Rule.SHELF_MEETS_KEEP_OUT,
            String.format(
                Locale.ROOT,
                "The post at x %s, y %s stands in the keep-out %s. Stand it elsewhere.",
                setting.wording().length(post.footprint().x()),
                setting.wording().length(post.footprint().y()),
                keepOut.name()));
      }
    }
  }
}
