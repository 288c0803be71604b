package shelfful.inspect;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;

/** Measures every layer of a setting that breaks no rule. */
final class LayerMeasure {
  private LayerMeasure() {}

  static List<LayerFigures> of(Setting setting) {
    return LayerSpace.of(setting).stream()
        .map(
            space -> {
              List<StandingPiece> pieces = setting.piecesOn(space.shelf());
              return new LayerFigures(
                  space.shelf().id(),
                  smallestGap(pieces),
                  new Length(space.clearHeight()),
                  ShelfMassCheck.massOf(pieces),
                  space.zone());
            })
        .toList();
  }

  /**
   * The least distance between any two that share a height and are not in one pile, rounded down;
   * empty when no two do.
   */
  private static Optional<Length> smallestGap(List<StandingPiece> pieces) {
    Carriers carriers = Carriers.of(pieces);
    double[] reaches = pieces.stream().mapToDouble(StandingPiece::reach).toArray();
    Reading least = Reading.UNLIMITED;
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        StandingPiece one = pieces.get(i);
        StandingPiece other = pieces.get(j);
        double best = least.micrometres();
        if (PieceGap.atLeast(one, other, reaches[i] + reaches[j]) < best
            && !carriers.isOnePile(one, other)) {
          Reading gap = PieceGap.atSharedHeights(one, other, best);
          least = gap.micrometres() < best ? gap : least;
        }
      }
    }
    return lengthOf(least);
  }

  static Optional<Length> lengthOf(Reading reading) {
    return reading == Reading.UNLIMITED
        ? Optional.empty()
        : Optional.of(new Length(reading.whole()));
  }
}
