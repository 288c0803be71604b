package shelfful.review;

import shelfful.week.FiringTimes;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.WeekPlan;

/** Whether each firing takes the time its program takes, within the week. */
final class FiringCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    for (PlannedFiring firing : plan.firings()) {
      Program program = plan.request().program(firing).orElseThrow();
      times(firing, program, findings);
      if (firing.hold() != Hold.ALL && firing.times().loads().isBefore(plan.request().start())
          || firing.hold() == Hold.FREE
              && firing.times().unpacked().isAfter(plan.request().end())) {
        findings.firing(
            WeekRule.FIRING_OUTSIDE_WEEK,
            firing.id(),
            "The firing " + firing.id() + " is not loaded and unpacked within the week.");
      }
    }
  }

  private static void times(PlannedFiring firing, Program program, WeekFindings findings) {
    FiringTimes times = firing.times();
    boolean right =
        times.lit().equals(times.loads().plus(program.loading()))
            && times.hot().equals(times.lit().plus(program.preheating().plus(program.up())))
            && times.cold().equals(times.hot().plus(program.down()))
            && !times.unpacks().isBefore(times.cold())
            && times.unpacked().equals(times.unpacks().plus(program.unpacking()));
    if (!right) {
      findings.firing(
          WeekRule.FIRING_TIMES_WRONG,
          firing.id(),
          "The times of the firing "
              + firing.id()
              + " are not those of the program "
              + program.id()
              + ".");
    }
  }
}
