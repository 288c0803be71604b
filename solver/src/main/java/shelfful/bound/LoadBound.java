package shelfful.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import shelfful.kiln.ColumnPlan;
import shelfful.load.LoadRequest;
import shelfful.planning.WareOnOffer;
import shelfful.planning.WareOnOffer.Offer;

/**
 * What no load of a request can exceed, whatever its column plan and setting, as long as it passes
 * the judge: in pieces, and in the points of worth that planning counts. Proven, not estimated;
 * docs/engine.md has the argument.
 *
 * <p>Where pieces may be piled only volume and mass bound a load, and refining changes nothing.
 * Otherwise a first value, the list itself, is there at once; every {@link #refine} can only lower
 * it. The same request and number of steps give the same values.
 */
public final class LoadBound {
  private static final double ROUNDING = 1e-6;

  private final BoundTask task;
  private final List<ColumnPlan> plans;
  private final Optional<PileBound> piled;
  private final List<PlanBound> pieces = new ArrayList<>();
  private final List<PlanBound> worth = new ArrayList<>();

  private LoadBound(LoadRequest request) {
    this.task = new BoundTask(request);
    this.plans =
        task.kiln().columnPlans().stream()
            .filter(plan -> request.columnPlanId().map(plan.id()::equals).orElse(true))
            .toList();
    this.piled = WareOnOffer.mayPile(request) ? Optional.of(new PileBound(task)) : Optional.empty();
  }

  /** The bound of a request, not refined yet. */
  public static LoadBound of(LoadRequest request) {
    return new LoadBound(request);
  }

  /** Improves both bounds by so many steps; each costs a few milliseconds. */
  public void refine(int steps) {
    refinePieces(steps);
    refine(worth, steps);
  }

  /** Improves the bound of pieces alone, at half the cost. */
  public void refinePieces(int steps) {
    refine(pieces, steps);
  }

  private void refine(List<PlanBound> bounds, int steps) {
    if (task.pieces().isEmpty() || piled.isPresent()) {
      return;
    }
    if (pieces.isEmpty()) {
      plans.forEach(this::lay);
    }
    for (int step = 0; step < steps; step++) {
      loosest(bounds).refine();
    }
  }

  private void lay(ColumnPlan plan) {
    List<Cluster> clusters = PlanClusters.of(task, plan);
    double[] each = new double[task.pieces().size()];
    Arrays.fill(each, 1);
    pieces.add(new PlanBound(task, clusters, each));
    worth.add(new PlanBound(task, clusters, worths()));
  }

  private double[] worths() {
    return task.pieces().stream().mapToDouble(piece -> piece.offer().worth()).toArray();
  }

  private static PlanBound loosest(List<PlanBound> bounds) {
    PlanBound loosest = bounds.get(0);
    for (PlanBound bound : bounds) {
      loosest = bound.best() > loosest.best() ? bound : loosest;
    }
    return loosest;
  }

  /** No load has more pieces in. */
  public int mostPieces() {
    double list = Arrays.stream(task.counts()).sum();
    double most = pieces.isEmpty() ? list : loosest(pieces).best();
    most = piled.map(bound -> bound.most(offer -> 1)).orElse(most);
    return (int) Math.floor(most * (1 + ROUNDING) + ROUNDING);
  }

  /** What {@link #mostPieces} is owed to. */
  public LimitCause cause() {
    if (piled.isPresent()) {
      return piled.get().cause();
    }
    int list = (int) Arrays.stream(task.counts()).sum();
    return pieces.isEmpty() || mostPieces() >= list ? LimitCause.LIST : loosest(pieces).cause();
  }

  /** No load is worth more points. */
  public long mostWorth() {
    double most = 0;
    for (int i = 0; i < task.counts().length; i++) {
      most += task.counts()[i] * worths()[i];
    }
    most = worth.isEmpty() ? most : loosest(worth).best();
    most = piled.map(bound -> bound.most(Offer::worth)).orElse(most);
    return (long) Math.floor(most * (1 + ROUNDING) + ROUNDING);
  }
}
