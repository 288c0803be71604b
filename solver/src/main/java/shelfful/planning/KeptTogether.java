package shelfful.planning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.load.KeptSetting;
import shelfful.load.LayerPlace;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.load.Placement;
import shelfful.load.PostUnder;

/** What must stay, told for a plan with joined shelves. */
final class KeptTogether {
  private final JoinedPlan joined;
  private final KeptSetting kept;

  private KeptTogether(JoinedPlan joined, KeptSetting kept) {
    this.joined = joined;
    this.kept = kept;
  }

  /** The same in a joined plan; empty where a locked layer's twin is not locked at its height. */
  static Optional<KeptSetting> of(JoinedPlan joined, KeptSetting kept) {
    return new KeptTogether(joined, kept).told();
  }

  private Optional<KeptSetting> told() {
    List<PinnedPiece> pieces = kept.pieces().stream().map(this::told).toList();
    List<LockedLayer> layers = new ArrayList<>();
    for (LockedLayer layer : kept.layers()) {
      Optional<TwinColumns> pair = pair(layer.layer());
      if (pair.isEmpty()) {
        layers.add(layer);
        continue;
      }
      Optional<LockedLayer> twin =
          kept.layers().stream().filter(other -> isTwin(pair.get(), layer, other)).findFirst();
      if (twin.isEmpty()) {
        return Optional.empty();
      }
      if (pair.get().isFirst(layer.layer())) {
        layers.add(together(pair.get(), layer, twin.get()));
      }
    }
    return Optional.of(new KeptSetting(kept.columnPlanId(), pieces, layers));
  }

  private Optional<TwinColumns> pair(LayerPlace place) {
    return joined.pairs().stream().filter(pair -> pair.holds(place)).findFirst();
  }

  private LayerPlace told(LayerPlace place) {
    return pair(place).map(pair -> new LayerPlace(pair.id(), place.level(), 0)).orElse(place);
  }

  private PinnedPiece told(PinnedPiece pin) {
    return new PinnedPiece(pin.pieceId(), told(pin.layer()), pin.at(), pin.turn(), pin.rest());
  }

  private static boolean isTwin(TwinColumns pair, LockedLayer one, LockedLayer other) {
    return pair.holds(other.layer())
        && pair.isFirst(one.layer()) != pair.isFirst(other.layer())
        && one.layer().level() == other.layer().level()
        && one.z().equals(other.z())
        && one.shelfId().equals(other.shelfId())
        && pair.shelves().stream().anyMatch(shelf -> shelf.id().equals(one.shelfId()));
  }

  private LockedLayer together(TwinColumns pair, LockedLayer first, LockedLayer second) {
    List<Placement> placements = new ArrayList<>(first.placements());
    placements.addAll(second.placements());
    Set<PostUnder> posts = new LinkedHashSet<>(first.posts());
    posts.addAll(second.posts());
    return new LockedLayer(
        told(first.layer()),
        joined.whole(pair.id(), first.shelfId()),
        first.z(),
        placements,
        List.copyOf(posts));
  }
}
