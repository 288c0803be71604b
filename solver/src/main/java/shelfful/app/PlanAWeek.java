package shelfful.app;

import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.schedule.LoadSource;
import shelfful.schedule.WeekPlanner;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * Plans a run of firings: every better week is inspected before anybody sees it. Runs once; {@link
 * #stop()} may be called from any thread.
 */
public final class PlanAWeek {
  private final WeekPlanner planner;
  private final WeekInspector inspector = new WeekInspector();
  private final Loads loads = new Loads();
  private volatile InspectedWeek best;

  /** A run for one request. */
  public PlanAWeek(WeekRequest request) {
    this.planner = new WeekPlanner(request, loads);
  }

  /** Ends planning within a second; the best week so far is kept. */
  public void stop() {
    planner.stop();
    loads.stop();
  }

  /** The best inspected week so far, or empty before the first. */
  public Optional<InspectedWeek> best() {
    return Optional.ofNullable(best);
  }

  /**
   * Plans with the effort of the request, which is repeatable.
   *
   * @return empty when the judge refused every week
   */
  public Optional<InspectedWeek> run(WeekListener listener) {
    loads.betweenSteps = listener::betweenSteps;
    planner.plan(plan -> take(plan, listener));
    return best();
  }

  /** Plans until a time is over or somebody stops it; the first week is always finished. */
  public Optional<InspectedWeek> run(Duration time, WeekListener listener) {
    long until = System.nanoTime() + time.toNanos();
    BooleanSupplier enough = () -> System.nanoTime() - until >= 0;
    loads.betweenSteps = listener::betweenSteps;
    planner.planUntil(enough, plan -> take(plan, listener));
    return best();
  }

  private void take(WeekPlan plan, WeekListener listener) {
    WeekInspection inspection = inspector.inspect(plan);
    if (inspection instanceof WeekInspection.Passed passed) {
      best = passed.week();
      listener.better(best);
    } else {
      listener.refused(plan, ((WeekInspection.Failed) inspection).findings());
    }
  }

  /** Loads from the load planner, one at a time. */
  private static final class Loads implements LoadSource {
    private volatile boolean stopped;
    private volatile PlanALoad running;
    private volatile Runnable betweenSteps = () -> {};

    @Override
    public Optional<InspectedLoad> plan(LoadRequest request) {
      PlanALoad planning = new PlanALoad(request);
      running = planning;
      if (stopped) {
        planning.stop();
      }
      return planning.run(
          SearchLength.ofSteps(request.steps()),
          new PlanListener() {
            @Override
            public void better(InspectedLoad load) {
              // The first load is enough then: the others come when the week has its shape.
              if (request.steps() == 0) {
                planning.stop();
              }
            }

            @Override
            public void betweenSteps() {
              betweenSteps.run();
            }
          });
    }

    void stop() {
      stopped = true;
      PlanALoad planning = running;
      if (planning != null) {
        planning.stop();
      }
    }
  }
}
