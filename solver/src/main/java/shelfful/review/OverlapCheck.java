package shelfful.review;

import java.util.List;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;

/** Whether no two firings are in one kiln at one time. */
final class OverlapCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    List<PlannedFiring> firings = plan.firings();
    for (int i = 0; i < firings.size(); i++) {
      for (int j = i + 1; j < firings.size(); j++) {
        PlannedFiring one = firings.get(i);
        PlannedFiring other = firings.get(j);
        if (one.kilnId().equals(other.kilnId())
            && one.times().busy().overlaps(other.times().busy())) {
          findings.firing(
              WeekRule.FIRINGS_OVERLAP,
              other.id(),
              "The firings "
                  + one.id()
                  + " and "
                  + other.id()
                  + " are in the kiln "
                  + one.kilnId()
                  + " at one time.");
        }
      }
    }
  }
}
