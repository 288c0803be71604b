package shelfful.inspect;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.load.Load;
import shelfful.measure.Length;

/**
 * For each piece that stands in a load the one on its layer that it comes closest to, as the judge
 * reads it: at the heights that both have, rounded down. Pieces of its own pile do not count.
 */
public final class Neighbours {
  private final Map<String, Nearest> nearest = new HashMap<>();

  /**
   * The piece that another comes closest to.
   *
   * @param pieceId which
   * @param gap between the two; below zero where they overlap
   */
  public record Nearest(String pieceId, Length gap) {}

  private Neighbours() {}

  private void measure(Setting setting) {
    for (LaidShelf shelf : setting.shelves()) {
      List<StandingPiece> pieces = setting.piecesOn(shelf);
      Carriers carriers = Carriers.of(pieces);
      double[] reaches = pieces.stream().mapToDouble(StandingPiece::reach).toArray();
      for (int i = 0; i < pieces.size(); i++) {
        find(pieces, carriers, reaches, i);
      }
    }
  }

  /** Measures a load, which may break rules; nothing where its figures are beyond reason. */
  public static Neighbours of(Load load) {
    Findings findings = new Findings();
    FigureCheck.judge(load, findings);
    Neighbours found = new Neighbours();
    if (!findings.isBroken()) {
      found.measure(SettingReader.read(load, findings));
    }
    return found;
  }

  private void find(List<StandingPiece> pieces, Carriers carriers, double[] reaches, int at) {
    StandingPiece one = pieces.get(at);
    Reading least = Reading.UNLIMITED;
    for (int j = 0; j < pieces.size(); j++) {
      StandingPiece other = pieces.get(j);
      double best = least.micrometres();
      if (j != at
          && !carriers.isOnePile(one, other)
          && PieceGap.atLeast(one, other, reaches[at] + reaches[j]) < best) {
        Reading gap = PieceGap.atSharedHeights(one, other, best);
        if (gap.micrometres() < best) {
          least = gap;
          nearest.put(one.id(), new Nearest(other.id(), new Length(gap.whole())));
        }
      }
    }
  }

  /** What a piece comes closest to; empty when nothing on its layer shares a height with it. */
  public Optional<Nearest> of(String pieceId) {
    return Optional.ofNullable(nearest.get(pieceId));
  }
}
