package shelfful.review;

import java.util.Set;
import java.util.TreeSet;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.Waiting;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/** Whether everything a week names is there, once. Without that nothing else can be judged. */
final class NameCheck {
  private NameCheck() {}

  static void judge(WeekPlan plan, WeekFindings findings) {
    Set<String> ids = new TreeSet<>();
    for (PlannedFiring firing : plan.firings()) {
      boolean known = plan.request().program(firing).isPresent();
      if (!ids.add(firing.id()) || !known) {
        findings.firing(
            WeekRule.FIRING_NOT_KNOWN,
            firing.id(),
            "The firing "
                + firing.id()
                + " is there twice, or its kiln "
                + firing.kilnId()
                + " has no program "
                + firing.programId()
                + ".");
      }
      firing.portions().forEach(portion -> portion(plan, firing.id(), portion, findings));
    }
    for (Waiting waiting : plan.waiting()) {
      portion(plan, "", waiting.portion(), findings);
    }
  }

  private static void portion(
      WeekPlan plan, String firing, Portion portion, WeekFindings findings) {
    int quantity =
        plan.request()
            .line(portion.batchId())
            .map(WareLine::batch)
            .map(b -> b.quantity())
            .orElse(0);
    int first = portion.numbers().get(0);
    int last = portion.numbers().get(portion.size() - 1);
    if (first < 1 || last > quantity) {
      findings.batch(
          WeekRule.PIECE_UNKNOWN,
          firing,
          portion.batchId(),
          "The batch "
              + portion.batchId()
              + " has "
              + quantity
              + " pieces on the list, but the week has number "
              + (first < 1 ? first : last)
              + ".");
    }
  }
}
