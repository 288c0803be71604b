package shelfful.app;

import java.util.List;
import java.util.Optional;
import shelfful.edit.WorkPlan;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Placement;

/**
 * The one place that knows how a plan with pins and locks is asked for again, and whether an answer
 * kept to them.
 */
public final class PlanAround {
  private PlanAround() {}

  /** Plans again with nothing pinned or locked moved; everything else may stand elsewhere. */
  public static Planning again(WorkPlan work) {
    KeptSetting kept = KeptSetting.of(work.load(), work.pinned(), work.locked());
    PlanALoad planning = new PlanALoad(work.load().request().keeping(kept));
    return planning.keptProblems().isEmpty() ? planning : new FillUp(work);
  }

  /** Whether a load leaves everything that is pinned or locked where it is. */
  public static boolean keeps(WorkPlan work, Load other) {
    WorkPlan answer = WorkPlan.of(other);
    boolean pins =
        work.pinned().stream()
            .allMatch(
                id ->
                    answer.placement(id).equals(work.placement(id))
                        && isSame(work.layerOf(id), answer.layerOf(id)));
    return pins
        && work.load().layers().stream()
            .filter(layer -> work.isLocked(layer.id()))
            .allMatch(layer -> other.layers().stream().anyMatch(one -> isSameAsLocked(layer, one)));
  }

  private static boolean isSame(Optional<Layer> one, Optional<Layer> other) {
    return one.isPresent() && other.isPresent() && isPlace(one.get(), other.get());
  }

  private static boolean isPlace(Layer one, Layer other) {
    return one.columnId().equals(other.columnId())
        && one.level() == other.level()
        && one.place() == other.place();
  }

  private static boolean isSameAsLocked(Layer locked, Layer other) {
    List<Placement> before = locked.placements();
    return isPlace(locked, other)
        && locked.z().equals(other.z())
        && before.size() == other.placements().size()
        && other.placements().containsAll(before);
  }
}
