package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.kiln.Column;
import shelfful.load.KeptSetting;
import shelfful.load.LockedLayer;
import shelfful.load.PostUnder;

/** The shelves and posts that stay as they stand: those of the locked layers. */
final class LockedStack {
  /** Nothing is locked. */
  static final LockedStack NOTHING = new LockedStack(List.of(), Map.of(), List.of());

  private final List<Integer> levels;
  private final Map<LayerSlot, LockedLayer> layers;
  private final List<Boolean> sealed;

  private LockedStack(
      List<Integer> levels, Map<LayerSlot, LockedLayer> layers, List<Boolean> sealed) {
    this.levels = levels;
    this.layers = layers;
    this.sealed = sealed;
  }

  /** Those of what a request keeps, by the columns of a plan that has them all. */
  static LockedStack of(Stand stand) {
    List<LockedLayer> kept = stand.request().kept().map(KeptSetting::layers).orElse(List.of());
    if (kept.isEmpty()) {
      return NOTHING;
    }
    Map<LayerSlot, LockedLayer> layers = new HashMap<>();
    kept.forEach(layer -> layers.put(stand.slot(layer.layer()), layer));
    List<Integer> levels = new ArrayList<>();
    List<Boolean> sealed = new ArrayList<>();
    for (int c = 0; c < stand.columns(); c++) {
      Column column = stand.column(c);
      levels.add(most(kept, column));
      sealed.add(
          kept.stream()
              .map(layer -> KeptSetting.columnsUnder(stand.plan(), layer.layer().columnId()))
              .anyMatch(under -> under.contains(column.id())));
    }
    return new LockedStack(levels, layers, sealed);
  }

  private static int most(List<LockedLayer> kept, Column column) {
    return kept.stream()
        .filter(layer -> layer.layer().columnId().equals(column.id()))
        .mapToInt(layer -> layer.layer().level())
        .max()
        .orElse(0);
  }

  boolean isNothing() {
    return layers.isEmpty();
  }

  /** How many levels of a column are locked, counted from the bottom. */
  int levels(int column) {
    return isNothing() ? 0 : levels.get(column);
  }

  /** Whether a locked layer stands on the column, so that no level may come on top of it. */
  boolean isSealed(int column) {
    return !isNothing() && sealed.get(column);
  }

  /** Whether the shelf at a height of a spot is locked, so that nothing may come on it. */
  boolean isLocked(Spot spot, long z) {
    return !isNothing()
        && layers.values().stream()
            .filter(layer -> layer.z().micrometres() == z)
            .map(LockedLayer::layer)
            .anyMatch(at -> at.columnId().equals(spot.owner().id()) && at.place() == spot.place());
  }

  Optional<LockedLayer> layer(int column, int level, int place) {
    return Optional.ofNullable(layers.get(new LayerSlot(column, level, place)));
  }

  /** Every locked layer. */
  Iterable<LockedLayer> layers() {
    return layers.values();
  }

  /** What is locked of a level, by place. */
  List<LockedLayer> level(Stand stand, int column, int level) {
    if (level >= levels(column)) {
      return List.of();
    }
    return stand.spotsOf(column).stream()
        .flatMap(spot -> layer(column, level, spot.place()).stream())
        .toList();
  }

  /** The posts under a level's locked shelves, each once. */
  List<PostUnder> postsUnder(Stand stand, int column, int level) {
    return level(stand, column, level).stream()
        .flatMap(layer -> layer.posts().stream())
        .distinct()
        .toList();
  }

  /** Every locked post, each once: neighbours can share one. */
  List<PostUnder> posts() {
    return layers.values().stream().flatMap(layer -> layer.posts().stream()).distinct().toList();
  }
}
