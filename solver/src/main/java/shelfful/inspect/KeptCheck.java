package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;

/** What was asked to stay stands where it stood, to the micrometre. */
final class KeptCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    setting.request().kept().ifPresent(kept -> judge(setting, kept, findings));
  }

  private static void judge(Setting setting, KeptSetting kept, Findings findings) {
    boolean samePlan = kept.columnPlanId().equals(setting.load().columnPlanId());
    for (PinnedPiece pin : kept.pieces()) {
      if (!samePlan || !stands(setting, pin)) {
        moved(setting, pin, findings);
      }
    }
    for (LockedLayer locked : kept.layers()) {
      Optional<Layer> now = layer(setting, locked.layer());
      boolean same = now.filter(l -> LockedLayer.of(setting.load(), l).equals(locked)).isPresent();
      if (!samePlan || !same) {
        changed(locked, now, findings);
      }
    }
  }

  private static Optional<Layer> layer(Setting setting, LayerPlace place) {
    return setting.load().layers().stream()
        .filter(layer -> LayerPlace.of(layer).equals(place))
        .findFirst();
  }

  private static boolean stands(Setting setting, PinnedPiece pin) {
    return layer(setting, pin.layer()).stream()
        .flatMap(layer -> layer.placements().stream())
        .anyMatch(
            one ->
                one.pieceId().equals(pin.pieceId())
                    && one.at().equals(pin.at())
                    && one.turn().equals(pin.turn())
                    && one.rest().equals(pin.rest()));
  }

  private static void moved(Setting setting, PinnedPiece pin, Findings findings) {
    findings.add(
        Rule.PINNED_PIECE_MOVED,
        layer(setting, pin.layer()).map(Layer::id).orElse(""),
        List.of(pin.pieceId()),
        String.format(
            Locale.ROOT,
            "%s is pinned on layer %d of column %s at x %s, y %s, turned %s degrees, and does not"
                + " stand there. Put it back or release it.",
            pin.pieceId(),
            pin.layer().level(),
            pin.layer().columnId(),
            pin.at().x(),
            pin.at().y(),
            pin.turn().degrees()));
  }

  private static void changed(LockedLayer locked, Optional<Layer> now, Findings findings) {
    findings.add(
        Rule.LOCKED_LAYER_CHANGED,
        now.map(Layer::id).orElse(""),
        String.format(
            Locale.ROOT,
            "Layer %d of column %s is locked, but its shelf, its posts, its height or what stands"
                + " on it is not as it was. Put it back or unlock it.",
            locked.layer().level(),
            locked.layer().columnId()));
  }
}
