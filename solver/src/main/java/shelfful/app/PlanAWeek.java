package shelfful.app;

import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.schedule.WeekPlanner;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * Plans a run of firings: every better week is inspected before anybody sees it. Runs once; {@link
 * #stop()} may be called from any thread.
 */
public final class PlanAWeek {
  /** What is kept of the time for spacing the last week: so many nanoseconds at most. */
  private static final long SPACING = 2_000_000_000L;

  /** And no more than this part. */
  private static final int SHARE = 20;

  private final WeekPlanner planner;
  private final WeekInspector inspector = new WeekInspector();
  private final WeekLoads loads;
  private volatile InspectedWeek best;

  /** A run for one request. */
  public PlanAWeek(WeekRequest request) {
    this.loads = new WeekLoads(request.studio());
    this.planner = new WeekPlanner(request, loads);
  }

  /** Ends planning within two seconds; the best week so far is kept, roughly spaced. */
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
    loads.betweenSteps(listener::betweenSteps);
    planner.plan(plan -> take(plan, listener));
    return best();
  }

  /**
   * Plans until a time is over or somebody stops it; the first week is always finished, and the
   * last is told once more with its loads evenly spaced.
   */
  public Optional<InspectedWeek> run(Duration time, WeekListener listener) {
    long until = System.nanoTime() + time.toNanos() - Math.min(SPACING, time.toNanos() / SHARE);
    BooleanSupplier enough = () -> System.nanoTime() - until >= 0;
    loads.betweenSteps(listener::betweenSteps);
    loads.hurry(enough);
    planner.planUntil(enough, plan -> take(plan, listener));
    if (best != null) {
      take(new SpacedWeek(loads.isStopped(), listener::betweenSteps).of(best.plan()), listener);
    }
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
}
