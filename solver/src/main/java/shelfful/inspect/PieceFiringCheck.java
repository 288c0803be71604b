package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.Stage;

/** Whether each piece may go into this firing at all: its stage, cone, atmosphere and glaze. */
final class PieceFiringCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Firing firing = setting.firing();
    for (StandingPiece piece : setting.pieces()) {
      stage(piece, firing, findings);
      cone(piece, firing, findings);
      piece.glaze().ifPresent(glaze -> glaze(piece, glaze, firing, findings));
    }
  }

  private static void stage(StandingPiece piece, Firing firing, Findings findings) {
    Stage stage = piece.made().piece().batch().stage();
    if (stage != firing.kind().goesIn()) {
      add(
          findings,
          Rule.PIECE_AT_WRONG_STAGE,
          piece,
          String.format(
              Locale.ROOT,
              "is at the stage %s, but a %s firing takes %s ware. Let it wait.",
              words(stage),
              words(firing.kind()),
              words(firing.kind().goesIn())));
    }
  }

  private static void cone(StandingPiece piece, Firing firing, Findings findings) {
    Optional<Cone> wanted =
        piece.made().piece().batch().cone().or(() -> piece.glaze().map(Glaze::cone));
    if (wanted.isPresent() && wanted.get().stepsFrom(firing.cone()) > firing.coneTolerance()) {
      add(
          findings,
          Rule.CONE_OUT_OF_TOLERANCE,
          piece,
          String.format(
              Locale.ROOT,
              "is for cone %s, %d cones from this firing's %s, but at most %d are allowed. Let it wait.",
              wanted.get().number(),
              wanted.get().stepsFrom(firing.cone()),
              firing.cone().number(),
              firing.coneTolerance()));
    }
  }

  private static void glaze(StandingPiece piece, Glaze glaze, Firing firing, Findings findings) {
    if (glaze.atmosphere().isPresent() && glaze.atmosphere().get() != firing.atmosphere()) {
      add(
          findings,
          Rule.ATMOSPHERE_WRONG,
          piece,
          String.format(
              Locale.ROOT,
              "is in %s, which needs %s, but this firing is in %s. Let it wait.",
              glaze.name(),
              words(glaze.atmosphere().get()),
              words(firing.atmosphere())));
    }
    if (firing.kind() == FiringKind.BISQUE) {
      add(
          findings,
          Rule.GLAZED_PIECE_WITHOUT_GLAZE_FIRING,
          piece,
          String.format(
              Locale.ROOT,
              "is glazed with %s and would stick in a bisque firing. Let it wait.",
              glaze.name()));
    }
  }

  private static String words(Enum<?> value) {
    return value.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  private static void add(Findings findings, Rule rule, StandingPiece piece, String what) {
    findings.add(rule, piece.layerId(), List.of(piece.id()), piece.id() + " " + what);
  }
}
