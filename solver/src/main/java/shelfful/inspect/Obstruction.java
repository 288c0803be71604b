package shelfful.inspect;

/** How far a piece is from something upright that is not ware. */
final class Obstruction {
  private Obstruction() {}

  /** The least distance at any height that both have; unlimited when they share none. */
  static Reading gap(StandingPiece piece, Footprint thing, HeightRange heights, double enough) {
    Reading least = Reading.UNLIMITED;
    for (PiecePart part : piece.parts()) {
      if (part.heights().shares(heights)) {
        least = least.orLess(Gap.between(part.footprint(), thing, enough));
      }
    }
    return least;
  }
}
