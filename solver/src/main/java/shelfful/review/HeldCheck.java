package shelfful.review;

import java.util.Optional;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;

/** Whether held firings stay as they were, and no other claims to be held. */
final class HeldCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    for (PlannedFiring held : plan.request().held()) {
      Optional<PlannedFiring> now = plan.firing(held.id());
      if (now.isEmpty() || !keeps(held, now.get())) {
        changed(held.id(), findings);
      }
    }
    for (PlannedFiring firing : plan.firings()) {
      boolean asked =
          plan.request().held().stream()
              .anyMatch(held -> held.id().equals(firing.id()) && held.hold() == firing.hold());
      if (firing.hold() != Hold.FREE && !asked) {
        changed(firing.id(), findings);
      }
    }
  }

  private static boolean keeps(PlannedFiring held, PlannedFiring now) {
    return held.hold() == Hold.ALL
        ? now.equals(held)
        : now.hold() == held.hold()
            && now.kilnId().equals(held.kilnId())
            && now.programId().equals(held.programId())
            && now.times().equals(held.times());
  }

  private static void changed(String id, WeekFindings findings) {
    findings.firing(
        WeekRule.HELD_FIRING_CHANGED,
        id,
        "The firing " + id + " is not held as it was asked to be.");
  }
}
