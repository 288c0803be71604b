package shelfful.edit;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.load.Placement;

/**
 * A plan as it lies on the desk. It may break rules while somebody works on it.
 *
 * @param load where everything stands and what waits
 * @param pinned ids of pieces that planning again must not move; only pieces that stand in the load
 * @param locked ids of layers that neither hand nor planning changes; only layers of the load
 */
public record WorkPlan(Load load, SortedSet<String> pinned, SortedSet<String> locked) {
  /** Takes its own copies, and leaves out pins and locks of what is no longer there. */
  public WorkPlan {
    pinned = kept(pinned, load.standing());
    locked = kept(locked, load.layers().stream().map(Layer::id).collect(Collectors.toSet()));
  }

  /** A plan with nothing pinned and nothing locked. */
  public static WorkPlan of(Load load) {
    return new WorkPlan(load, Collections.emptySortedSet(), Collections.emptySortedSet());
  }

  private static SortedSet<String> kept(SortedSet<String> ids, Set<String> known) {
    TreeSet<String> kept = new TreeSet<>(ids);
    kept.retainAll(known);
    return Collections.unmodifiableSortedSet(kept);
  }

  /** The layer a piece stands on. */
  public Optional<Layer> layerOf(String pieceId) {
    return load.layers().stream()
        .filter(layer -> layer.placements().stream().anyMatch(one -> one.pieceId().equals(pieceId)))
        .findFirst();
  }

  /** Where a piece stands. */
  public Optional<Placement> placement(String pieceId) {
    return load.layers().stream()
        .flatMap(layer -> layer.placements().stream())
        .filter(one -> one.pieceId().equals(pieceId))
        .findFirst();
  }

  /** A piece that stands in the load, with all that it carries and all that carries it. */
  public Pile pile(String pieceId) {
    return Pile.with(pieceId, layerOf(pieceId).orElseThrow().placements());
  }

  /** Why a piece waits; empty when it stands in the load. */
  public Optional<LeftOut> waiting(String pieceId) {
    return load.leftOut().stream().filter(one -> one.pieceId().equals(pieceId)).findFirst();
  }

  public boolean isPinned(String pieceId) {
    return pinned.contains(pieceId);
  }

  public boolean isLocked(String layerId) {
    return locked.contains(layerId);
  }

  /** Whether a piece stands on a locked layer. */
  public boolean isHeld(String pieceId) {
    return layerOf(pieceId).map(Layer::id).filter(this::isLocked).isPresent();
  }

  WorkPlan with(Load other) {
    return new WorkPlan(other, pinned, locked);
  }

  WorkPlan pinning(String pieceId, boolean hold) {
    return new WorkPlan(load, changed(pinned, pieceId, hold), locked);
  }

  WorkPlan locking(String layerId, boolean hold) {
    return new WorkPlan(load, pinned, changed(locked, layerId, hold));
  }

  private static SortedSet<String> changed(SortedSet<String> ids, String id, boolean hold) {
    TreeSet<String> changed = new TreeSet<>(ids);
    if (hold) {
      changed.add(id);
    } else {
      changed.remove(id);
    }
    return changed;
  }
}
