package shelfful.planning;

import java.util.Locale;
import java.util.Optional;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.load.LoadRequest;
import shelfful.measure.Cone;
import shelfful.ware.Catcher;
import shelfful.ware.FiringKind;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * Turns away what may not go into a firing whatever the setting: wrong stage, cone or atmosphere.
 */
final class FiringDoor {
  private final LoadRequest request;

  FiringDoor(LoadRequest request) {
    this.request = request;
  }

  /** Why a piece may not go in, or empty. */
  Optional<LeftOut> refuses(Piece piece) {
    return wrongStage(piece)
        .or(() -> glazedInBisque(piece))
        .or(() -> otherCone(piece))
        .or(() -> otherAtmosphere(piece));
  }

  /** The glaze that matters in this firing: none does in a bisque firing. */
  Optional<Glaze> glaze(Piece piece) {
    if (request.firing().kind() == FiringKind.BISQUE) {
      return Optional.empty();
    }
    return piece.batch().glazeId().flatMap(request.studio()::glaze);
  }

  /** What goes under a piece in this firing, if anything does. */
  Optional<Catcher> catcher(Piece piece) {
    return request.catcher(piece);
  }

  /** A piece as it stands in this firing. */
  StandingWare standing(Piece piece) {
    return request.standing(piece);
  }

  Form form(Piece piece) {
    return request.studio().form(piece.batch().formId()).orElseThrow();
  }

  private Optional<LeftOut> wrongStage(Piece piece) {
    FiringKind kind = request.firing().kind();
    if (piece.batch().stage() == kind.goesIn()) {
      return Optional.empty();
    }
    String sentence =
        String.format(
            Locale.ROOT,
            "It is %s; a %s firing takes ware that is %s.",
            words(piece.batch().stage()),
            words(kind),
            words(kind.goesIn()));
    return out(piece, Reason.NOT_READY, sentence, "Put it on the list again when it is ready.");
  }

  /** Bone-dry ware can carry a glaze already; it would stick, and its fumes would mark others. */
  private Optional<LeftOut> glazedInBisque(Piece piece) {
    Optional<Glaze> on = piece.batch().glazeId().flatMap(request.studio()::glaze);
    if (request.firing().kind() != FiringKind.BISQUE || on.isEmpty()) {
      return Optional.empty();
    }
    return out(
        piece,
        Reason.NOT_READY,
        "It is glazed with " + on.get().name() + "; nothing glazed goes into a bisque firing.",
        "If the glaze is not on it yet, take it off the list's line.");
  }

  private Optional<LeftOut> otherCone(Piece piece) {
    Optional<Cone> wanted = piece.batch().cone().or(() -> glaze(piece).map(Glaze::cone));
    if (wanted.isEmpty() || request.firing().takes(wanted.get())) {
      return Optional.empty();
    }
    String sentence =
        String.format(
            Locale.ROOT,
            "It is fired to cone %s; this firing goes to cone %s (within %d).",
            wanted.get().number(),
            request.firing().cone().number(),
            request.firing().coneTolerance());
    return out(
        piece,
        Reason.OTHER_CONE,
        sentence,
        "Fire it with others of cone " + wanted.get().number() + ".");
  }

  private Optional<LeftOut> otherAtmosphere(Piece piece) {
    Optional<Glaze> glaze = glaze(piece);
    if (glaze.isEmpty() || request.firing().takes(glaze.get().atmosphere())) {
      return Optional.empty();
    }
    String wanted = words(glaze.get().atmosphere().orElseThrow());
    String sentence =
        String.format(
            Locale.ROOT,
            "Its glaze %s needs %s; this firing is in %s.",
            glaze.get().name(),
            wanted,
            words(request.firing().atmosphere()));
    return out(piece, Reason.OTHER_ATMOSPHERE, sentence, "Fire it in " + wanted + ".");
  }

  private static Optional<LeftOut> out(Piece piece, Reason reason, String sentence, String mend) {
    return Optional.of(new LeftOut(piece.id(), reason, sentence, mend));
  }

  private static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
