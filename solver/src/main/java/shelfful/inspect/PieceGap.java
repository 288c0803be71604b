package shelfful.inspect;

import shelfful.ware.FiringKind;

/** How far apart two pieces have to be, and are. */
final class PieceGap {
  private PieceGap() {}

  /** The gap that two pieces have to keep in this firing, micrometres. */
  static long required(Setting setting, StandingPiece one, StandingPiece other) {
    long tolerances = one.tolerance() + other.tolerance();
    if (setting.firing().kind() == FiringKind.BISQUE) {
      return setting.clearances().bisqueToBisque().micrometres() + tolerances;
    }
    long house = setting.clearances().glazedToGlazed().micrometres();
    return Math.max(house, Math.max(asked(one), asked(other))) + tolerances;
  }

  private static long asked(StandingPiece piece) {
    return piece.glaze().flatMap(glaze -> glaze.gap()).map(gap -> gap.micrometres()).orElse(0L);
  }

  /**
   * The least distance at any height that both have, {@link Reading#UNLIMITED} when they share
   * none. Distances of {@code enough} or more are not read any closer.
   */
  static Reading atSharedHeights(StandingPiece one, StandingPiece other, double enough) {
    Reading least = Reading.UNLIMITED;
    for (PiecePart part : one.parts()) {
      for (PiecePart otherPart : other.parts()) {
        if (part.heights().shares(otherPart.heights())) {
          least = least.orLess(Gap.between(part.footprint(), otherPart.footprint(), enough));
        }
      }
    }
    return least;
  }

  /** The least distance in the plan, whatever the heights. */
  static Reading inPlan(StandingPiece one, StandingPiece other, double enough) {
    Reading least = Reading.UNLIMITED;
    for (PiecePart part : one.parts()) {
      for (PiecePart otherPart : other.parts()) {
        least = least.orLess(Gap.between(part.footprint(), otherPart.footprint(), enough));
      }
    }
    return least;
  }

  /** A distance that the true one is not below, in any case and at no cost. */
  static double atLeast(StandingPiece one, StandingPiece other, double reaches) {
    return one.axis().minus(other.axis()).length() - reaches;
  }
}
