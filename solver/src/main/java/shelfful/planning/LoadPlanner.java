package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.kiln.ColumnPlan;
import shelfful.load.KeptProblem;
import shelfful.load.KeptSetting;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.PinnedPiece;

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
  private final AtomicBoolean enough = new AtomicBoolean();
  private final List<PlanDesk> desks = new CopyOnWriteArrayList<>();
  private final List<LoadPlanner> steps = new CopyOnWriteArrayList<>();
  private Optional<Load> earlier = Optional.empty();
  private Optional<ShelfBook> book = Optional.empty();
  private Runnable betweenSteps = () -> {};
  private boolean steady;
  private double spacingPrecision;
  private Merit merit;
  private ReadyWare ready;
  private List<Stand> laid;
  private List<KeptProblem> problems = List.of();
  private volatile boolean mayStop;

  public LoadPlanner(LoadRequest request) {
    this(request, EnvironmentMode.REPRODUCIBLE);
  }

  LoadPlanner(LoadRequest request, EnvironmentMode mode) {
    this.request = request;
    this.mode = mode;
  }

  /**
   * Lets the search begin from an earlier load, with what of it is still on the list where it
   * stood. A load of a column plan that is not asked for is left aside.
   *
   * @param holdStill whether pieces that stood in it are left where they are unless moving them is
   *     worth it: a must-go piece more, or an ordinary piece more for every four that are moved
   */
  public LoadPlanner startFrom(Load load, boolean holdStill) {
    earlier = Optional.of(load).filter(this::isOfOneOfItsPlans);
    steady = holdStill;
    return this;
  }

  /**
   * Spaces the last load less finely, to so many millimetres, which takes less than half the time;
   * infinite leaves pieces where the search found room for them.
   */
  public LoadPlanner spacedTo(double millimetres) {
    spacingPrecision = millimetres;
    return this;
  }

  /**
   * Begins with what a book knows of shelves, and writes there what is found; where there is an
   * earlier load to begin from as well, no other is made from nothing. Of no use where ware is set
   * in piles or pieces have to stay. The load is then no function of the request alone. Set before
   * planning; a book of another studio is left aside.
   */
  public LoadPlanner with(ShelfBook shelves) {
    book = Optional.of(shelves).filter(one -> one.isOf(request.studio()));
    return this;
  }

  private boolean isOfOneOfItsPlans(Load load) {
    List<ColumnPlan> plans = request.kiln().columnPlans();
    return plans.stream()
        .filter(plan -> plan.id().equals(load.columnPlanId()))
        .anyMatch(
            plan ->
                load.layers().stream()
                    .allMatch(
                        layer ->
                            KeptNames.column(plan, layer.columnId()).stream()
                                .anyMatch(column -> layer.place() < column.places().size())));
  }

  /**
   * Has something done between two steps of the search, every few milliseconds and on each thread
   * that plans. While it lasts that thread does not plan, so whoever needs the processor more can
   * hold planning up; the load planned in steps is the same. Set before planning.
   */
  public LoadPlanner betweenSteps(Runnable other) {
    betweenSteps = other;
    return this;
  }

  /** Ends planning soon; the best load so far is kept. */
  public void stop() {
    stopped.set(true);
    steps.forEach(LoadPlanner::stop);
    for (PlanDesk desk : desks) {
      desk.search().end();
    }
  }

  /**
   * Ends the search soon, as if its budget were spent: the best load so far is kept and, other than
   * after {@link #stop()}, still evenly spaced. May be called from any thread.
   */
  public void enough() {
    enough.set(true);
    steps.forEach(LoadPlanner::enough);
    for (PlanDesk desk : desks) {
      desk.search().end();
    }
  }

  /**
   * Plans, telling of every better load on the way.
   *
   * @return the best load, evenly spaced
   * @throws IllegalArgumentException when there are {@link #keptProblems()}
   */
  public Load plan(SearchBudget budget, PlanWatch watch) {
    List<KeptProblem> reasons = keptProblems();
    if (!reasons.isEmpty()) {
      throw new IllegalArgumentException(
          "The setting cannot be kept: "
              + reasons.stream().map(KeptProblem::sentence).collect(Collectors.joining(" ")));
    }
    Optional<Load> still = steady && earlier.isPresent() ? still(budget, watch) : Optional.empty();
    return still.orElseGet(() -> search(budget, watch));
  }

  /** First with all pinned that stood, then freely; empty when nothing can be held still. */
  private Optional<Load> still(SearchBudget budget, PlanWatch watch) {
    SmallChange change = new SmallChange(request, earlier.orElseThrow());
    Optional<LoadRequest> pinned = change.pinned();
    if (pinned.isEmpty()) {
      return Optional.empty();
    }
    LoadPlanner around = step(pinned.get());
    SearchBudget half = budget.share(0.5);
    Load load = change.asAsked(around.plan(half, found -> watch.better(change.asAsked(found))));
    merit = around.merit;
    LoadPlanner freely = step(request).startFrom(load, false);
    Load other = freely.plan(budget.without(half), found -> {});
    int moreMoved = change.moved(other) - change.moved(load);
    if (!SmallChange.isWorth(merit, freely.merit, moreMoved)) {
      return Optional.of(load);
    }
    merit = freely.merit;
    return Optional.of(other);
  }

  private LoadPlanner step(LoadRequest asked) {
    LoadPlanner planner =
        new LoadPlanner(asked, mode).betweenSteps(betweenSteps).spacedTo(spacingPrecision);
    steps.add(planner);
    if (stopped.get()) {
      planner.stop();
    }
    if (enough.get()) {
      planner.enough();
    }
    return planner;
  }

  private Load search(SearchBudget budget, PlanWatch watch) {
    List<Stand> stands = lay();
    Lead lead = new Lead(watch);
    PlanDesk first = begin(stands);
    lead.offer(first);
    mayStop = true;
    for (Stand stand : stands) {
      if (!isOver()) {
        PlanDesk desk = stand == first.stand() ? first : desk(stand);
        if (book.isEmpty() || !desk.goesOn()) {
          desk.greedy();
        }
        lead.offer(desk);
        if (stand.joinsColumns() && desk != lead.desk()) {
          desks.remove(desk);
        }
      }
    }
    if (!budget.isSpent() && !isOver()) {
      Course course = new Course(lead, () -> hasToStop() || enough.get());
      if (budget.isInSteps()) {
        course.inSteps(desks, budget);
      } else {
        course.inTime(desks, this::another, budget);
      }
    }
    desks.forEach(PlanDesk::writeDown);
    merit = lead.desk().merit();
    return Double.isInfinite(spacingPrecision)
        ? lead.desk().asFound()
        : lead.desk().evenlySpaced(spacingPrecision);
  }

  /**
   * A load of this request, planned before, with its pieces evenly spaced on every shelf; the same
   * load where that cannot be done.
   */
  public Load spaced(Load load) {
    return lay().stream()
        .filter(stand -> load.columnPlanId().equals(stand.plan().id()))
        .flatMap(stand -> plain(stand).spaced(load, spacingPrecision).stream())
        .findFirst()
        .orElse(load);
  }

  /** The desk that has a load first: the one that takes most over where there is an earlier one. */
  private PlanDesk begin(List<Stand> stands) {
    Optional<PlanDesk> going = earlier.flatMap(load -> goingOn(stands, load));
    PlanDesk first = going.orElseGet(() -> plain(stands.get(0)));
    desks.add(first);
    if (!first.hasBegun()) {
      first.coarse();
    }
    return first;
  }

  private Optional<PlanDesk> goingOn(List<Stand> stands, Load load) {
    PlanDesk best = null;
    for (Stand stand : stands) {
      if (load.columnPlanId().equals(stand.plan().id())) {
        PlanDesk desk = plain(stand);
        desk.begin(load);
        boolean better =
            best == null
                || desk.hasBegun()
                    && (!best.hasBegun() || desk.merit().compareTo(best.merit()) > 0);
        best = better ? desk : best;
      }
    }
    return Optional.ofNullable(best);
  }

  /** A desk with a load on it just as it is, or empty where it would not stand so. */
  Optional<PlanDesk> holding(Load load) {
    return lay().stream()
        .filter(stand -> load.columnPlanId().equals(stand.plan().id()))
        .map(this::plain)
        .filter(desk -> desk.takesOver(load))
        .findFirst();
  }

  /**
   * Asked between any two steps. The first load is always finished: it takes a fraction of a
   * second, and there is nothing else to keep.
   */
  private boolean hasToStop() {
    betweenSteps.run();
    return mayStop && stopped.get();
  }

  private boolean isOver() {
    return stopped.get() || enough.get();
  }

  /** Why what must stay cannot stay; empty when it can, or when nothing must. */
  public List<KeptProblem> keptProblems() {
    List<KeptProblem> unknown = KeptNames.problems(request);
    if (request.kept().isEmpty() || !unknown.isEmpty()) {
      return unknown;
    }
    lay();
    return problems;
  }

  /**
   * The column plans to choose from; sorts the ware and looks for kept problems on the way. Done
   * once.
   */
  private List<Stand> lay() {
    if (laid == null) {
      laid = laidAnew();
    }
    return laid;
  }

  private List<Stand> laidAnew() {
    List<Stand> stands =
        Stand.all(request, request.kept().map(KeptSetting::columnPlanId).or(request::columnPlanId));
    Impossible impossible = new Impossible(request, stands);
    Set<String> kept =
        request.kept().map(KeptSetting::standing).orElse(List.of()).stream()
            .map(PinnedPiece::pieceId)
            .collect(Collectors.toSet());
    ready =
        new LotSorter(request)
            .sort(
                piece -> kept.contains(piece.id()) ? Optional.empty() : impossible.refuses(piece));
    return request.kept().isEmpty() ? stands : thatKeep(stands);
  }

  /**
   * Those in which all that must stay can: what reaches over a joint may need its shelves joined,
   * other things may need them apart. Never empty: if it can stay in none, one tells why.
   */
  private List<Stand> thatKeep(List<Stand> stands) {
    List<Stand> all = new ArrayList<>(stands);
    stands.stream()
        .filter(Stand::isJoined)
        .map(Stand::own)
        .distinct()
        .filter(plan -> all.stream().noneMatch(stand -> stand.plan().equals(plan)))
        .forEach(plan -> all.add(new Stand(request, plan)));
    List<Stand> keeping =
        all.stream().filter(stand -> plain(stand).keptProblems().isEmpty()).toList();
    if (!keeping.isEmpty()) {
      return keeping;
    }
    List<Stand> apart = all.stream().filter(one -> !one.isJoined()).toList();
    problems = plain(apart.get(0)).keptProblems();
    return apart;
  }

  private PlanDesk desk(Stand stand) {
    PlanDesk desk = plain(stand);
    desks.add(desk);
    return desk;
  }

  private PlanDesk plain(Stand stand) {
    PlanDesk desk = new PlanDesk(stand, ready, mode, request.seed(), this::hasToStop);
    book.ifPresent(desk::with);
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
    PlanningWork here =
        desks.stream().map(PlanDesk::work).reduce(PlanningWork.NONE, PlanningWork::plus);
    return steps.stream().map(LoadPlanner::work).reduce(here, PlanningWork::plus);
  }
}
