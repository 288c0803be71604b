package shelfful.app;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.ware.Piece;

/**
 * Plans a list again that was changed a little: what is pinned or locked stays, and what else
 * stands stays too unless moving it brings more in.
 */
public final class ChangedList implements Planning {
  private static final String WAITS = "It came onto the list after this was planned.";
  private static final String MEND = "Plan again.";

  private final WorkPlan before;
  private final WorkPlan carried;
  private final LoadRequest request;
  private final PlanALoad planning;
  private final FillUp filling;

  /**
   * Not begun yet.
   *
   * @param before as it stood for the list as it was
   * @param request the list as it is
   */
  public ChangedList(WorkPlan before, LoadRequest request) {
    this.before = before;
    this.request = request;
    this.carried = carried(before, request);
    KeptSetting kept = KeptSetting.of(carried.load(), carried.pinned(), carried.locked());
    this.planning = new PlanALoad(request.keeping(kept));
    this.filling = new FillUp(carried);
  }

  /**
   * Whether a list is the one of a plan with changes: for the same kiln, and with more than half of
   * what stands still on it in the same form and glaze.
   */
  public static boolean isOf(WorkPlan plan, LoadRequest request) {
    Load load = plan.load();
    Set<String> still = still(load, request);
    return load.placed() > 0
        && load.request().firing().kilnId().equals(request.firing().kilnId())
        && 2 * still.size() > load.placed();
  }

  /** What stands and is still on the list, with the pins and locks of it. */
  public WorkPlan carried() {
    return carried;
  }

  private static WorkPlan carried(WorkPlan before, LoadRequest request) {
    Load load = before.load();
    Set<String> still = still(load, request);
    List<Layer> layers =
        load.layers().stream().map(layer -> layer.holding(of(layer, still))).toList();
    List<LeftOut> waiting =
        request.pieces().stream()
            .map(Piece::id)
            .filter(id -> !still.contains(id))
            .map(id -> new LeftOut(id, LeftOut.Reason.NO_ROOM, WAITS, MEND))
            .toList();
    return new WorkPlan(
        new Load(request, load.columnPlanId(), layers, load.posts(), waiting),
        before.pinned(),
        before.locked());
  }

  private static List<Placement> of(Layer layer, Set<String> pieceIds) {
    return layer.placements().stream().filter(one -> pieceIds.contains(one.pieceId())).toList();
  }

  /** The pieces that stand and are on the list as they were. */
  private static Set<String> still(Load load, LoadRequest request) {
    Map<String, Piece> now = new HashMap<>();
    request.pieces().forEach(piece -> now.put(piece.id(), piece));
    Set<String> standing =
        load.layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .map(Placement::pieceId)
            .collect(Collectors.toSet());
    return load.request().pieces().stream()
        .filter(piece -> standing.contains(piece.id()))
        .filter(piece -> now.containsKey(piece.id()) && isAlike(piece, now.get(piece.id())))
        .map(Piece::id)
        .collect(Collectors.toSet());
  }

  private static boolean isAlike(Piece one, Piece other) {
    return one.batch().formId().equals(other.batch().formId())
        && one.batch().glazeId().equals(other.batch().glazeId());
  }

  @Override
  public Optional<InspectedLoad> run(SearchLength length, PlanListener listener) {
    if (!planning.keptProblems().isEmpty()) {
      return filling.run(length, listener);
    }
    Inspection inspection = new Inspector().inspect(before.load());
    boolean sameThings = before.load().request().studio().equals(request.studio());
    if (sameThings && inspection instanceof Inspection.Passed passed) {
      planning.startFrom(passed.load(), true);
    }
    return planning.run(length, listener);
  }

  @Override
  public void stop() {
    planning.stop();
    filling.stop();
  }
}
