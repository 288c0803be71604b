package shelfful.files;

import java.util.HashSet;
import java.util.Set;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;

/**
 * What stays of a plan, as marks on its pieces and layers: where they stand is in the plan already.
 */
final class KeptMarks {
  private final Set<String> pieces = new HashSet<>();
  private final Set<String> layers = new HashSet<>();

  static KeptMarks of(Load load) {
    KeptMarks marks = new KeptMarks();
    load.request().kept().ifPresent(kept -> marks.add(load, kept));
    return marks;
  }

  private void add(Load load, KeptSetting kept) {
    kept.pieces().forEach(pin -> pin(pin.pieceId()));
    for (Layer layer : load.layers()) {
      if (kept.locked(LayerPlace.of(layer)).isPresent()) {
        lock(layer.id());
      }
    }
  }

  void pin(String pieceId) {
    pieces.add(pieceId);
  }

  void lock(String layerId) {
    layers.add(layerId);
  }

  boolean isPinned(String pieceId) {
    return pieces.contains(pieceId);
  }

  boolean isLocked(String layerId) {
    return layers.contains(layerId);
  }

  /** A load whose request asks for what is marked to stay. */
  Load asked(Load load) {
    KeptSetting kept = KeptSetting.of(load, pieces, layers);
    return new Load(
        load.request().keeping(kept),
        load.columnPlanId(),
        load.layers(),
        load.posts(),
        load.leftOut());
  }
}
