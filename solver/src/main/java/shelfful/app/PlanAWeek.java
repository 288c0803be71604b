package shelfful.app;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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
    loads.hurry();
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

  /** Loads from the load planner, one at a time for each thread that asks. */
  private static final class Loads implements LoadSource {
    /** Of the gaps on a shelf, in millimetres, where time counts: a hand sets no finer. */
    private static final double ROUGH = 0.25;

    private final Set<PlanALoad> running = ConcurrentHashMap.newKeySet();
    private volatile boolean hurried;
    private volatile boolean stopped;
    private volatile Runnable betweenSteps = () -> {};

    /**
     * From now on a load in which everything stands is not searched for fewer layers, and loads are
     * spaced less finely.
     */
    void hurry() {
      hurried = true;
    }

    @Override
    public Optional<InspectedLoad> plan(LoadRequest request) {
      PlanALoad planning = new PlanALoad(request);
      if (hurried) {
        planning.spacedTo(ROUGH);
      }
      running.add(planning);
      try {
        if (stopped) {
          planning.stop();
        }
        return planning.run(SearchLength.ofSteps(request.steps()), listener(request, planning));
      } finally {
        running.remove(planning);
      }
    }

    private PlanListener listener(LoadRequest request, PlanALoad planning) {
      return new PlanListener() {
        @Override
        public void better(InspectedLoad load) {
          if (request.steps() == 0) {
            // Without steps the first load is enough: the others come when the week has its shape.
            planning.stop();
          } else if (hurried && load.load().leftOut().isEmpty()) {
            planning.enough();
          }
        }

        @Override
        public void betweenSteps() {
          betweenSteps.run();
        }
      };
    }

    void stop() {
      stopped = true;
      running.forEach(PlanALoad::stop);
    }
  }
}
