package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.ware.Form;
import shelfful.ware.Glaze;

/**
 * A piece whose glaze runs or wants more bare foot than it has stands on a catcher; no other does.
 */
final class CatcherCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (StandingPiece piece : setting.pieces()) {
      boolean stands = piece.placement().onCatcher();
      if (needs(piece) && !stands) {
        add(
            findings,
            piece,
            String.format(
                Locale.ROOT,
                "in %s needs a catcher under it and has none. Set it on one.",
                piece.glaze().orElseThrow().name()));
      } else if (!needs(piece) && stands) {
        add(findings, piece, "stands on a catcher that it does not need. Take it away.");
      }
    }
  }

  /** Whether a form in a glaze has to stand on a catcher. */
  static boolean needs(Optional<Glaze> glaze, Form form) {
    return glaze
        .filter(one -> one.runny() || one.bareFoot().micrometres() > form.bareFoot().micrometres())
        .isPresent();
  }

  private static boolean needs(StandingPiece piece) {
    return needs(piece.glaze(), piece.made().form());
  }

  private static void add(Findings findings, StandingPiece piece, String what) {
    findings.add(
        Rule.CATCHER_MISSING, piece.layerId(), List.of(piece.id()), piece.id() + " " + what);
  }
}
