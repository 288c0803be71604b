package shelfful.app;

import java.util.List;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Load;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;

/**
 * Spaces the loads of a week evenly, on as many processors as there are. While a week is looked for
 * that would take a sixth of the time, for loads that nobody ever sees.
 */
final class SpacedWeek {
  /** Of the gaps on a shelf, in millimetres: a hand sets no finer. */
  private static final double ROUGH = 0.25;

  /** Where somebody waits for the end: half the time. */
  private static final double ROUGHER = 1;

  private final double precision;
  private final Runnable betweenSteps;

  /**
   * A way of spacing.
   *
   * @param soon whether it has to be done soon, and so less finely
   */
  SpacedWeek(boolean soon, Runnable betweenSteps) {
    this.precision = soon ? ROUGHER : ROUGH;
    this.betweenSteps = betweenSteps;
  }

  /** The same week; firings that are frozen are left as they are. */
  WeekPlan of(WeekPlan plan) {
    List<PlannedFiring> firings = plan.firings().parallelStream().map(this::spaced).toList();
    return new WeekPlan(plan.request(), firings, plan.waiting(), plan.late());
  }

  private PlannedFiring spaced(PlannedFiring firing) {
    return firing.hold() == Hold.ALL ? firing : firing.with(firing.load().map(this::spaced));
  }

  private Load spaced(Load load) {
    return new PlanALoad(load.request())
        .spacedTo(precision)
        .betweenSteps(betweenSteps)
        .spaced(load)
        .map(InspectedLoad::load)
        .orElse(load);
  }
}
