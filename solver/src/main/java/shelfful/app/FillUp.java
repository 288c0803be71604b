package shelfful.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shelfful.edit.Edit;
import shelfful.edit.Hand;
import shelfful.edit.Tentative;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspector;
import shelfful.inspect.JudgedLoad;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.measure.Angle;
import shelfful.measure.Point;
import shelfful.ware.Piece;

/**
 * Puts what waits into free places, and moves nothing: the smallest change to a plan that was
 * worked on by hand. Sets go in whole or not at all; layers that are locked are passed over.
 */
public final class FillUp implements Planning {
  private final Inspector inspector = new Inspector();
  private final WorkPlan start;
  private volatile boolean stopped;

  public FillUp(WorkPlan start) {
    this.start = start;
  }

  @Override
  public void stop() {
    stopped = true;
  }

  /** Tries everything once, whatever the length. */
  @Override
  public Optional<InspectedLoad> run(SearchLength length, PlanListener listener) {
    Optional<InspectedLoad> best = passed(start);
    WorkPlan now = start;
    for (List<String> set : sets()) {
      listener.betweenSteps();
      Optional<WorkPlan> next = stopped ? Optional.empty() : withAll(now, set);
      Optional<InspectedLoad> better = next.flatMap(this::passed);
      if (better.isPresent()) {
        now = next.get();
        best = better;
        listener.better(better.get());
      }
    }
    return best;
  }

  /** What waits for want of room, in the order of the list, sets together. */
  private List<List<String>> sets() {
    Map<String, List<String>> sets =
        start.load().request().pieces().stream()
            .filter(piece -> start.waiting(piece.id()).filter(FillUp::mayGoIn).isPresent())
            .collect(
                Collectors.groupingBy(
                    Piece::setKey,
                    LinkedHashMap::new,
                    Collectors.mapping(Piece::id, Collectors.toList())));
    return List.copyOf(sets.values());
  }

  private static boolean mayGoIn(LeftOut leftOut) {
    return switch (leftOut.reason()) {
      case NO_ROOM, SET_WAITS, KEPT_APART -> true;
      default -> false;
    };
  }

  private Optional<WorkPlan> withAll(WorkPlan plan, List<String> pieceIds) {
    Optional<WorkPlan> now = Optional.of(plan);
    for (String id : pieceIds) {
      now = now.flatMap(one -> with(one, id));
    }
    return now;
  }

  private Optional<WorkPlan> with(WorkPlan plan, String pieceId) {
    Optional<Hand> hand = Hand.of(plan, pieceId);
    for (Layer layer : plan.load().layers()) {
      if (stopped || plan.isLocked(layer.id())) {
        continue;
      }
      Optional<Tentative> free =
          hand.flatMap(one -> one.free(layer.id(), Point.ORIGIN, Angle.ZERO));
      if (free.isPresent()) {
        Edit in = new Edit.PutIn(layer.id(), free.get().place());
        WorkPlan filled = new WorkPlan(in.on(plan).load(), plan.pinned(), plan.locked());
        if (onlySetsAreSplit(filled)) {
          return Optional.of(filled);
        }
      }
    }
    return Optional.empty();
  }

  /** The rest of a set may be still to come; any other fault is one. */
  private boolean onlySetsAreSplit(WorkPlan plan) {
    return inspector
        .judge(plan.load())
        .filter(
            judged -> judged.faults().stream().allMatch(fault -> fault.rule().equals("setSplit")))
        .isPresent();
  }

  private Optional<InspectedLoad> passed(WorkPlan plan) {
    Optional<JudgedLoad> judged = inspector.judge(plan.load());
    return judged.isPresent() && judged.get() instanceof InspectedLoad load
        ? Optional.of(load)
        : Optional.empty();
  }
}
