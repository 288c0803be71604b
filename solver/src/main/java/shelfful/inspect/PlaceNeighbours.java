package shelfful.inspect;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.KeepOut;
import shelfful.ware.KeptApart;

/**
 * Figures of a piece against what stands about it: ware, posts, keep-outs.
 *
 * @param piece at the place asked about
 */
record PlaceNeighbours(Setting setting, StandingPiece piece) {

  void add(List<StandingPiece> others, List<PlaceFigure> figures) {
    double reach = piece.reach();
    for (StandingPiece other : others) {
      pair(other, reach, figures);
    }
    posts(reach, figures);
    for (KeepOut keepOut : setting.kiln().keepOuts()) {
      keepOut(keepOut, figures);
    }
  }

  private void pair(StandingPiece other, double reach, List<PlaceFigure> figures) {
    long required = PieceGap.required(setting, piece, other);
    long apart = required + keptApart(other).orElse(0L);
    if (PieceGap.atLeast(piece, other, reach + other.reach()) > apart + PlaceJudge.NEAR) {
      return;
    }
    if (piece.heights().shares(other.heights())) {
      nearest(other, true)
          .ifPresent(
              one ->
                  figures.add(PlaceJudge.figure(Rule.PIECES_TOO_CLOSE, other.id(), one, required)));
    }
    keptApart(other)
        .ifPresent(
            distance ->
                figures.add(
                    PlaceJudge.figure(
                        Rule.KEPT_APART_TOO_CLOSE,
                        other.id(),
                        nearest(other, false).orElseThrow(),
                        distance)));
  }

  /** How far two glazes that are kept apart by distance have to be, on one layer. */
  private Optional<Long> keptApart(StandingPiece other) {
    if (piece.glaze().isEmpty() || other.glaze().isEmpty() || other.shelf() != piece.shelf()) {
      return Optional.empty();
    }
    return setting.rules().keptApart().stream()
        .filter(pair -> pair.apartness() == KeptApart.Apartness.BY_DISTANCE)
        .filter(pair -> pair.isAbout(piece.glaze().get().id(), other.glaze().get().id()))
        .map(pair -> pair.distance().orElseThrow().micrometres())
        .map(distance -> distance + piece.tolerance() + other.tolerance())
        .max(Long::compare);
  }

  private Optional<Approach> nearest(StandingPiece other, boolean atSharedHeights) {
    Optional<Approach> least = Optional.empty();
    for (PiecePart part : piece.parts()) {
      for (PiecePart theirs : other.parts()) {
        if (!atSharedHeights || part.heights().shares(theirs.heights())) {
          least = nearer(least, Approach.between(part.footprint(), theirs.footprint()));
        }
      }
    }
    return least;
  }

  private static Optional<Approach> nearer(Optional<Approach> least, Approach other) {
    return Optional.of(least.map(one -> one.orNearer(other)).orElse(other));
  }

  private void posts(double reach, List<PlaceFigure> figures) {
    long required = setting.clearances().wareToPost().micrometres() + piece.tolerance();
    int number = 0;
    for (StoodPost post : setting.posts()) {
      number++;
      Disc disc = post.footprint();
      double apart = post.middle().minus(piece.axis()).length() - reach - disc.radius();
      if (apart <= required + PlaceJudge.NEAR) {
        String name = Integer.toString(number);
        against(disc, post.heights())
            .ifPresent(
                one ->
                    figures.add(
                        PlaceJudge.figure(Rule.PIECE_TOO_CLOSE_TO_POST, name, one, required)));
      }
    }
  }

  private Optional<Approach> against(Footprint thing, HeightRange heights) {
    Optional<Approach> least = Optional.empty();
    for (PiecePart part : piece.parts()) {
      if (part.heights().shares(heights)) {
        least = nearer(least, Approach.between(part.footprint(), thing));
      }
    }
    return least;
  }

  private void keepOut(KeepOut keepOut, List<PlaceFigure> figures) {
    long required = setting.clearances().wareToKeepOut().micrometres() + piece.tolerance();
    against(KeepOutCheck.footprint(keepOut), KeepOutCheck.heights(keepOut))
        .filter(one -> one.distance().micrometres() <= required + PlaceJudge.NEAR)
        .ifPresent(
            one ->
                figures.add(
                    PlaceJudge.figure(
                        Rule.PIECE_TOO_CLOSE_TO_KEEP_OUT, keepOut.name(), one, required)));
  }
}
