package shelfful.inspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Two pieces keep their gap wherever they share a height, on one layer or not. Pieces of one pile
 * touch by design; how they rest is for others to judge.
 */
final class PieceGapCheck implements Check {
  /** So many pairs are named; a heap of ware on one spot would otherwise give millions. */
  private static final int MOST_FINDINGS = 2000;

  private record Spread(StandingPiece piece, double left, double right, double reach) {
    static Spread of(StandingPiece piece) {
      double reach = piece.reach();
      return new Spread(piece, piece.axis().x() - reach, piece.axis().x() + reach, reach);
    }
  }

  @Override
  public void judge(Setting setting, Findings findings) {
    List<Spread> sorted = new ArrayList<>();
    setting.pieces().forEach(piece -> sorted.add(Spread.of(piece)));
    sorted.sort(Comparator.comparingDouble(Spread::left));
    double widest = widestGap(setting);
    Carriers carriers = Carriers.of(setting.pieces());
    int found = 0;
    for (int i = 0; i < sorted.size(); i++) {
      double end = sorted.get(i).right() + widest;
      for (int j = i + 1; j < sorted.size() && sorted.get(j).left() <= end; j++) {
        boolean together = carriers.isOnePile(sorted.get(i).piece(), sorted.get(j).piece());
        found += together || judge(setting, sorted.get(i), sorted.get(j), findings) ? 0 : 1;
        if (found >= MOST_FINDINGS) {
          findings.add(
              Rule.PIECES_TOO_CLOSE,
              String.format(
                  Locale.ROOT,
                  "More than %d pairs stand too close; the rest is not listed.",
                  found));
          return;
        }
      }
    }
  }

  /** No pair of pieces of this setting has to keep a wider gap. */
  private static double widestGap(Setting setting) {
    long widest = 0;
    long loosest = 0;
    for (StandingPiece piece : setting.pieces()) {
      long tolerances = 2 * piece.tolerance();
      widest = Math.max(widest, PieceGap.required(setting, piece, piece) - tolerances);
      loosest = Math.max(loosest, tolerances);
    }
    return widest + loosest + 2 * Reading.TOLERANCE;
  }

  private static boolean judge(Setting setting, Spread left, Spread right, Findings findings) {
    StandingPiece one = left.piece();
    StandingPiece other = right.piece();
    if (!one.heights().shares(other.heights())) {
      return true;
    }
    long required = PieceGap.required(setting, one, other);
    double atLeast = PieceGap.atLeast(one, other, left.reach() + right.reach());
    if (atLeast >= required + 2 * Reading.TOLERANCE) {
      return true;
    }
    Reading gap = PieceGap.atSharedHeights(one, other, required);
    if (gap.reaches(required)) {
      return true;
    }
    Wording wording = setting.wording();
    findings.add(
        Rule.PIECES_TOO_CLOSE,
        one.layerId(),
        List.of(one.id(), other.id()),
        String.format(
            Locale.ROOT,
            "The gap between %s and %s is %s. Move them %s farther apart, or one to another layer.",
            one.id(),
            other.id(),
            wording.butNeeds(gap.whole(), required),
            wording.missing(gap.whole(), required)));
    return false;
  }
}
