package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import shelfful.ware.KeptApart;

/** Glazes that mark each other are kept as far apart as the house says. */
final class KeptApartCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (KeptApart pair : setting.rules().keptApart()) {
      if (pair.apartness() == KeptApart.Apartness.NOT_IN_ONE_FIRING) {
        together(setting.pieces(), pair, Rule.KEPT_APART_IN_ONE_FIRING, "", findings);
        continue;
      }
      for (LaidShelf shelf : setting.shelves()) {
        List<StandingPiece> pieces = setting.piecesOn(shelf);
        if (pair.apartness() == KeptApart.Apartness.NOT_ON_ONE_LAYER) {
          together(pieces, pair, Rule.KEPT_APART_ON_ONE_LAYER, shelf.id(), findings);
        } else {
          byDistance(setting, pieces, pair, findings);
        }
      }
    }
  }

  private static void together(
      List<StandingPiece> pieces, KeptApart pair, Rule rule, String layerId, Findings findings) {
    List<StandingPiece> ones = inGlaze(pieces, pair.glazeId());
    List<StandingPiece> others = inGlaze(pieces, pair.otherGlazeId());
    if (!ones.isEmpty() && !others.isEmpty()) {
      List<String> ids =
          Stream.concat(ones.stream(), others.stream()).map(StandingPiece::id).toList();
      findings.add(
          rule,
          layerId,
          ids,
          String.format(
              Locale.ROOT,
              "%d pieces in %s and %d in %s are %s, where the two may not be together. Let one glaze wait%s.",
              ones.size(),
              nameOf(ones),
              others.size(),
              nameOf(others),
              layerId.isEmpty() ? "in one firing" : "on layer " + layerId,
              layerId.isEmpty() ? "" : " or move it to another layer"));
    }
  }

  private static void byDistance(
      Setting setting, List<StandingPiece> pieces, KeptApart pair, Findings findings) {
    long distance = pair.distance().orElseThrow().micrometres();
    Wording wording = setting.wording();
    for (StandingPiece one : inGlaze(pieces, pair.glazeId())) {
      for (StandingPiece other : inGlaze(pieces, pair.otherGlazeId())) {
        long required = distance + one.tolerance() + other.tolerance();
        Reading gap = PieceGap.inPlan(one, other, required);
        if (!gap.reaches(required)) {
          findings.add(
              Rule.KEPT_APART_TOO_CLOSE,
              one.layerId(),
              List.of(one.id(), other.id()),
              String.format(
                  Locale.ROOT,
                  "The distance between %s in %s and %s in %s is %s. Move them %s farther apart.",
                  one.id(),
                  one.glaze().orElseThrow().name(),
                  other.id(),
                  other.glaze().orElseThrow().name(),
                  wording.butNeeds(gap.whole(), required),
                  wording.missing(gap.whole(), required)));
        }
      }
    }
  }

  private static List<StandingPiece> inGlaze(List<StandingPiece> pieces, String glazeId) {
    return pieces.stream()
        .filter(piece -> piece.glaze().filter(glaze -> glaze.id().equals(glazeId)).isPresent())
        .toList();
  }

  private static String nameOf(List<StandingPiece> pieces) {
    return pieces.get(0).glaze().orElseThrow().name();
  }
}
