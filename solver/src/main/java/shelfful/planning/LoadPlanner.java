package shelfful.planning;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
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
  private static final long TWIN_SEED = 7919;

  private final LoadRequest request;
  private final EnvironmentMode mode;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final List<PlanDesk> desks = new CopyOnWriteArrayList<>();
  private ReadyWare ready;
  private volatile boolean mayStop;

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
    for (PlanDesk desk : desks) {
      desk.search().end();
    }
  }

  /**
   * Plans, telling of every better load on the way.
   *
   * @return the best load, evenly spaced
   */
  public Load plan(SearchBudget budget, PlanWatch watch) {
    List<Stand> stands = lay();
    Lead lead = new Lead(watch);
    PlanDesk first = desk(stands.get(0));
    first.coarse();
    lead.offer(first);
    mayStop = true;
    for (Stand stand : stands) {
      if (!stopped.get()) {
        PlanDesk desk = stand == first.stand() ? first : desk(stand);
        desk.greedy();
        lead.offer(desk);
      }
    }
    if (!budget.isSpent() && !stopped.get()) {
      Course course = new Course(lead, this::isStopped);
      if (budget.isInSteps()) {
        course.inSteps(desks, budget);
      } else {
        course.inTime(desks, this::another, budget);
      }
    }
    return lead.desk().evenlySpaced();
  }

  /**
   * The first load is always finished: it takes a fraction of a second, and there is nothing else
   * to keep.
   */
  private boolean isStopped() {
    return mayStop && stopped.get();
  }

  /** The column plans to choose from; sorts the ware on the way. */
  private List<Stand> lay() {
    Kiln kiln = request.studio().kiln(request.firing().kilnId()).orElseThrow();
    List<Stand> stands =
        kiln.columnPlans().stream()
            .filter(plan -> request.columnPlanId().map(plan.id()::equals).orElse(true))
            .sorted(Comparator.comparing(ColumnPlan::id))
            .map(plan -> new Stand(request, plan))
            .toList();
    Impossible impossible = new Impossible(request, stands);
    ready = new LotSorter(request).sort(impossible::refuses);
    return stands;
  }

  private PlanDesk desk(Stand stand) {
    PlanDesk desk = new PlanDesk(stand, ready, mode, request.seed(), this::isStopped);
    desks.add(desk);
    return desk;
  }

  /** A second desk for the same column plan, with another seed and a memory of its own. */
  private PlanDesk another(PlanDesk desk) {
    PlanDesk twin = desk.twin(request.seed() + TWIN_SEED);
    desks.add(twin);
    return twin;
  }

  /** How much was asked of the packer; to be looked at when planning is over. */
  public PlanningWork work() {
    return desks.stream().map(PlanDesk::work).reduce(PlanningWork.NONE, PlanningWork::plus);
  }
}
