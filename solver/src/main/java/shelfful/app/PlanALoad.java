package shelfful.app;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import shelfful.inspect.Finding;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.KeptProblem;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;
import shelfful.planning.ShelfBook;

/**
 * Plans one load: every better one is inspected before anybody sees it, and one that fails is
 * dropped with a report. Runs once; {@link #stop()} may be called from any thread.
 */
public final class PlanALoad implements Planning {
  private final LoadRequest request;
  private final LoadPlanner planner;
  private final Inspector inspector = new Inspector();
  private volatile InspectedLoad best;

  public PlanALoad(LoadRequest request) {
    this.request = request;
    this.planner = new LoadPlanner(request);
  }

  /**
   * Lets the search begin from an earlier load.
   *
   * @param holdStill whether pieces that stood in it stay where they are unless moving them brings
   *     more in
   */
  public PlanALoad startFrom(InspectedLoad earlier, boolean holdStill) {
    planner.startFrom(earlier.load(), holdStill);
    return this;
  }

  /** Lets the search begin from a load of much the same ware. */
  PlanALoad startFrom(Load like) {
    planner.startFrom(like, false);
    return this;
  }

  /** Why what must stay cannot stay. While there is anything here {@link #run} refuses to begin. */
  public List<KeptProblem> keptProblems() {
    return planner.keptProblems();
  }

  @Override
  public void stop() {
    planner.stop();
  }

  /** Spaces the last load to so many millimetres instead of as evenly as can be found. */
  PlanALoad spacedTo(double millimetres) {
    planner.spacedTo(millimetres);
    return this;
  }

  /** Begins with what is known of shelves in a book, and writes there what is found. */
  PlanALoad with(ShelfBook shelves) {
    planner.with(shelves);
    return this;
  }

  /** Has something done between two steps, by the thread that makes them. */
  PlanALoad betweenSteps(Runnable other) {
    planner.betweenSteps(other);
    return this;
  }

  /** A load of this request with its pieces evenly spaced; empty when the judge refuses it. */
  Optional<InspectedLoad> spaced(Load load) {
    return inspector.inspect(planner.spaced(load)).passed();
  }

  /** Ends the search soon; the best load so far is kept and evenly spaced. */
  void enough() {
    planner.enough();
  }

  /** The best inspected load so far, or empty before the first. */
  public Optional<InspectedLoad> best() {
    return Optional.ofNullable(best);
  }

  /**
   * What no load of this request can exceed. Worked out anew at each call, in a second or so; may
   * be called from any thread, while planning runs or after.
   */
  public LoadLimit limit() {
    return LoadLimit.of(request);
  }

  /** Empty when every load made was refused by the judge. */
  @Override
  public Optional<InspectedLoad> run(SearchLength length, PlanListener listener) {
    planner.betweenSteps(listener::betweenSteps);
    Load last = planner.plan(budget(length), load -> take(load, listener));
    take(last, listener);
    return best();
  }

  private static SearchBudget budget(SearchLength length) {
    return length.isInSteps()
        ? SearchBudget.ofSteps(length.steps())
        : SearchBudget.ofMillis(
            length.time().toMillis(), () -> TimeUnit.NANOSECONDS.toMillis(System.nanoTime()));
  }

  private void take(Load load, PlanListener listener) {
    Inspection inspection = inspector.inspect(load);
    if (inspection instanceof Inspection.Passed passed) {
      best = passed.load();
      listener.better(best);
    } else {
      List<Finding> findings = ((Inspection.Failed) inspection).findings();
      listener.refused(new FaultReport(load, findings));
    }
  }
}
