package shelfful.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.load.LoadRequest;
import shelfful.load.PinnedPiece;
import shelfful.load.Rest;
import shelfful.measure.Length;
import shelfful.packing.BodyKind;
import shelfful.planning.Tower.Storey;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;
import shelfful.ware.Piece;
import shelfful.ware.PileOutline;
import shelfful.ware.StandingWare;

/** The kinds of a request: what is the same to the shelf is one kind. */
final class KindTable {
  private final LoadRequest request;
  private final FiringDoor door;
  private final Map<String, PinnedPiece> kept;
  private final Map<KindKey, WareKind> kinds = new LinkedHashMap<>();

  /**
   * @param kept pieces that stay, by id: one in a pile is a body of its own, as it lies there
   */
  KindTable(LoadRequest request, FiringDoor door, Map<String, PinnedPiece> kept) {
    this.request = request;
    this.door = door;
    this.kept = kept;
  }

  /** What makes a kind; two pieces with equal keys are the same to the shelf. */
  private record KindKey(StandingWare ware, Length tolerance, Optional<String> gapGlaze) {}

  List<WareKind> all() {
    return List.copyOf(kinds.values());
  }

  WareKind kind(Piece piece) {
    Form form = door.form(piece);
    Optional<String> gapGlaze = door.glaze(piece).filter(this::matters).map(Glaze::id);
    return kind(new KindKey(lying(piece), form.tolerance(), gapGlaze), form.name());
  }

  WareKind kind(Tower tower) {
    Length tolerance = Length.ZERO;
    for (Storey storey : tower.storeys()) {
      tolerance = Length.longer(tolerance, form(storey).tolerance());
    }
    StandingWare ware = PileOutline.of(tower.storeys().stream().map(Storey::ware).toList());
    String name = form(tower.storeys().get(0)).name() + " \u00d7" + tower.size();
    return kind(new KindKey(ware, tolerance, Optional.empty()), name);
  }

  private Form form(Storey storey) {
    return door.form(storey.lot().pieces().get(0));
  }

  private StandingWare lying(Piece piece) {
    StandingWare ware = door.standing(piece);
    PinnedPiece pin = kept.get(piece.id());
    if (pin == null || pin.rest().isPlain()) {
      return ware;
    }
    Rest rest = pin.rest();
    return ware.lying(rest.upsideDown(), rest.lift());
  }

  private WareKind kind(KindKey key, String name) {
    return kinds.computeIfAbsent(key, k -> make(k, name));
  }

  private WareKind make(KindKey key, String name) {
    boolean atAnyHeight = key.gapGlaze().filter(this::keepsDistance).isPresent();
    BodyKind body = WareTranslator.body(name, key.ware(), key.tolerance(), atAnyHeight);
    return new WareKind(kinds.size(), key.ware(), key.gapGlaze(), body, FootprintArea.of(body));
  }

  /**
   * Whether the shelf must know which glaze it is: it asks for a gap, or for a distance to another.
   */
  private boolean matters(Glaze glaze) {
    return glaze.gap().isPresent() || keepsDistance(glaze.id());
  }

  private boolean keepsDistance(String glazeId) {
    return request.studio().rules().keptApart().stream()
        .filter(rule -> rule.apartness() == Apartness.BY_DISTANCE)
        .anyMatch(rule -> isIn(rule, glazeId));
  }

  private static boolean isIn(KeptApart rule, String glazeId) {
    return rule.glazeId().equals(glazeId) || rule.otherGlazeId().equals(glazeId);
  }
}
