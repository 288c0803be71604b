package shelfful.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/**
 * The door to planning: one request, one run. A first load comes at once; better ones follow until
 * the budget is spent or somebody stops it; the last one is evenly spaced. Every load handed out is
 * complete but not inspected.
 *
 * <p>With a budget in steps the loads are a pure function of the request. {@link #stop()} may be
 * called from any thread; all else happens on the thread that calls {@link #plan}.
 */
public final class LoadPlanner {
  /** How much of the budget goes into finding out which column plan is best. */
  private static final double TRIAL_SHARE = 0.3;

  /**
   * How much of the rest goes into the quick search; what is left retries what was refused in a
   * hurry.
   */
  private static final double QUICK_SHARE = 0.6;

  private final LoadRequest request;
  private final EnvironmentMode mode;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final List<PlanDesk> desks = new ArrayList<>();
  private PlanDesk leading;

  public LoadPlanner(LoadRequest request) {
    this(request, EnvironmentMode.REPRODUCIBLE);
  }

  LoadPlanner(LoadRequest request, EnvironmentMode mode) {
    this.request = request;
    this.mode = mode;
  }

  /** Ends planning soon; the best load so far is kept. */
  public void stop() {
    stopped.set(true);
    for (PlanDesk desk : List.copyOf(desks)) {
      desk.search().end();
    }
  }

  /**
   * Plans, telling of every better load on the way.
   *
   * @return the best load, evenly spaced
   */
  public Load plan(SearchBudget budget, PlanWatch watch) {
    lay();
    leading = null;
    for (PlanDesk desk : desks) {
      desk.greedy();
      lead(desk, watch);
    }
    if (!budget.isSpent() && desks.size() > 1) {
      SearchBudget trials = budget.share(TRIAL_SHARE);
      budget = budget.without(trials);
      for (int i = 0; i < desks.size(); i++) {
        PlanDesk desk = desks.get(i);
        desk.searchOn(trials.share(1.0 / (desks.size() - i)), 0, () -> lead(desk, watch));
        trials =
            trials.isInSteps() ? trials.without(trials.share(1.0 / (desks.size() - i))) : trials;
      }
    }
    finish(budget, watch);
    return leading.evenlySpaced();
  }

  private void finish(SearchBudget budget, PlanWatch watch) {
    PlanDesk desk = leading;
    if (!budget.isSpent()) {
      SearchBudget quick = budget.share(QUICK_SHARE);
      desk.searchOn(quick, 1, () -> lead(desk, watch));
      SearchBudget rest = budget.without(quick);
      if (!rest.isSpent() && !stopped.get()) {
        desk.tryHarder();
        desk.searchOn(rest, 2, () -> lead(desk, watch));
      }
    }
  }

  private void lay() {
    Kiln kiln = request.studio().kiln(request.firing().kilnId()).orElseThrow();
    List<Stand> stands =
        kiln.columnPlans().stream()
            .filter(plan -> request.columnPlanId().map(plan.id()::equals).orElse(true))
            .sorted(Comparator.comparing(ColumnPlan::id))
            .map(plan -> new Stand(request, plan))
            .toList();
    Impossible impossible = new Impossible(request, stands);
    ReadyWare ware = new LotSorter(request).sort(impossible::refuses);
    for (Stand stand : stands) {
      desks.add(new PlanDesk(stand, ware, mode, stopped::get));
    }
  }

  private void lead(PlanDesk desk, PlanWatch watch) {
    if (leading == null || desk.merit().compareTo(leading.merit()) > 0 || desk == leading) {
      leading = desk;
      watch.better(desk.asFound());
    }
  }

  /** How many shelf questions were asked of the packer so far. */
  public long asked() {
    return desks.stream().mapToLong(PlanDesk::asked).sum();
  }
}
