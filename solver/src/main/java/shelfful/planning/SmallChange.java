package shelfful.planning;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.load.KeptProblem;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.load.Placement;
import shelfful.ware.Piece;

/** What a request that differs little from an earlier one should leave where it stands. */
final class SmallChange {
  /** So many pieces may be moved for every ordinary piece that comes in by it. */
  static final int MOVED_FOR_ONE = 4;

  private static final long ORDINARY = 100;
  private static final int MOST_RELEASES = 20;

  private final LoadRequest request;
  private final Load earlier;

  SmallChange(LoadRequest request, Load earlier) {
    this.request = request;
    this.earlier = earlier;
  }

  /**
   * The request with everything pinned that stood in the earlier load and is still on the list;
   * what can no longer stand there is released. Empty when nothing can be kept so.
   */
  Optional<LoadRequest> pinned() {
    Set<String> pieces = new HashSet<>();
    request.pieces().stream().map(Piece::id).forEach(pieces::add);
    for (int i = 0; i < MOST_RELEASES; i++) {
      LoadRequest asked = request.keeping(keeping(pieces));
      List<KeptProblem> problems = new LoadPlanner(asked).keptProblems();
      if (problems.isEmpty()) {
        return Optional.of(asked);
      }
      Set<String> named = new HashSet<>();
      problems.forEach(problem -> named.addAll(problem.pieceIds()));
      if (!pieces.removeAll(named)) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** What the request keeps anyway, and these pieces where the earlier load has them. */
  private KeptSetting keeping(Set<String> pieces) {
    KeptSetting all = KeptSetting.of(earlier, pieces, Set.of());
    Map<String, PinnedPiece> pins = new HashMap<>();
    Set<LayerPlace> locked = new HashSet<>();
    List<LockedLayer> layers = request.kept().map(KeptSetting::layers).orElse(List.of());
    layers.forEach(layer -> locked.add(layer.layer()));
    all.pieces().stream()
        .filter(pin -> !locked.contains(pin.layer()) && pieces.contains(pin.pieceId()))
        .forEach(pin -> pins.put(pin.pieceId(), pin));
    request
        .kept()
        .map(KeptSetting::standing)
        .orElse(List.of())
        .forEach(pin -> pins.remove(pin.pieceId()));
    request
        .kept()
        .map(KeptSetting::pieces)
        .orElse(List.of())
        .forEach(pin -> pins.put(pin.pieceId(), pin));
    return new KeptSetting(earlier.columnPlanId(), List.copyOf(pins.values()), layers);
  }

  /** The same load as an answer to the request as it was asked. */
  Load asAsked(Load load) {
    return new Load(request, load.columnPlanId(), load.layers(), load.posts(), load.leftOut());
  }

  /** How many pieces of the earlier load stand elsewhere in another, or wait there. */
  int moved(Load now) {
    Set<PinnedPiece> standing = standing(now);
    Set<String> listed = new HashSet<>();
    request.pieces().forEach(piece -> listed.add(piece.id()));
    return (int)
        standing(earlier).stream()
            .filter(pin -> listed.contains(pin.pieceId()) && !standing.contains(pin))
            .count();
  }

  private static Set<PinnedPiece> standing(Load load) {
    Set<PinnedPiece> all = new HashSet<>();
    for (Layer layer : load.layers()) {
      for (Placement one : layer.placements()) {
        all.add(PinnedPiece.of(LayerPlace.of(layer), one));
      }
    }
    return all;
  }

  /** Whether a load that moves more pieces is so much better that it is worth the moving. */
  static boolean isWorth(Merit steady, Merit better, int moreMoved) {
    if (better.broken() > 0 || better.mustGoWaiting() > steady.mustGoWaiting()) {
      return false;
    }
    boolean mustGo = better.mustGoWaiting() < steady.mustGoWaiting();
    return mustGo
        || (better.worth() - steady.worth()) * MOVED_FOR_ONE > ORDINARY * moreMoved
        || better.worth() > steady.worth() && moreMoved <= 0;
  }
}
