package shelfful.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.inspect.InspectedLoad;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;

/** The judge of finished weeks. Stateless; one may be shared by threads. */
public final class WeekInspector {
  private static final List<WeekCheck> CHECKS =
      List.of(
          new FiringCheck(),
          new CalendarCheck(),
          new OverlapCheck(),
          new PortionCheck(),
          new WayCheck(),
          new WaitingCheck(),
          new HeldCheck(),
          new LateCheck(),
          new OrderCheck());

  /** Judges a week from nothing but itself and what was asked; never throws for what is in it. */
  public WeekInspection inspect(WeekPlan plan) {
    WeekFindings findings = new WeekFindings();
    NameCheck.judge(plan, findings);
    if (findings.isBroken()) {
      return new WeekInspection.Failed(findings.brokenFirst());
    }
    Ways ways = new Ways(plan);
    CHECKS.forEach(check -> check.judge(plan, ways, findings));
    Map<String, InspectedLoad> loads = new HashMap<>();
    for (PlannedFiring firing : plan.firings()) {
      Optional<InspectedLoad> load = LoadCheck.judge(firing, findings);
      load.ifPresent(good -> loads.put(firing.id(), good));
    }
    return findings.isBroken()
        ? new WeekInspection.Failed(findings.brokenFirst())
        : new WeekInspection.Passed(new InspectedWeek(plan, loads, findings.brokenFirst()));
  }
}
