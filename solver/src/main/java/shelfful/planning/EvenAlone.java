package shelfful.planning;

import java.util.Optional;
import java.util.Set;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.load.LoadRequest;
import shelfful.ware.Piece;

/**
 * Tells before anything is planned what is too large or too heavy for a kiln even by itself. Looks
 * at size and mass alone: not at stage, cone or atmosphere, which another firing may suit.
 */
public final class EvenAlone {
  private static final Set<Reason> SIZES =
      Set.of(Reason.TOO_TALL, Reason.TOO_WIDE, Reason.TOO_HEAVY);

  private final Impossible impossible;

  /** For the kiln, the column plan if one is wanted, and the firing of a request, of any list. */
  public EvenAlone(LoadRequest request) {
    this.impossible = new Impossible(request, Stand.all(request, request.columnPlanId()));
  }

  /** Why a piece has no place with nothing beside it; empty when it has. */
  public Optional<LeftOut> refuses(Piece piece) {
    return impossible.refuses(piece).filter(left -> SIZES.contains(left.reason()));
  }
}
