package shelfful.review;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shelfful.ware.FiringKind;
import shelfful.week.Late;
import shelfful.week.PlannedFiring;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/** Whether the week says of just those pieces that they are late that are, by as many days. */
final class LateCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    Map<String, Integer> derived = new TreeMap<>();
    for (WareLine line : plan.request().lines()) {
      if (!line.needs().isEmpty() && line.batch().due().isPresent()) {
        LocalDate due = line.batch().due().get();
        FiringKind last = line.needs().get(line.needs().size() - 1);
        for (int number = 1; number <= line.batch().quantity(); number++) {
          List<PlannedFiring> firings = ways.firings(line.batch().id(), number, last);
          if (!firings.isEmpty()) {
            LocalDate done = firings.get(0).times().unpacked().toLocalDate();
            long days = due.until(done, ChronoUnit.DAYS);
            if (days > 0) {
              derived.merge(line.batch().id() + " by " + days, 1, Integer::sum);
            }
          }
        }
      }
    }
    Map<String, Integer> said = new TreeMap<>();
    for (Late late : plan.late()) {
      said.merge(late.batchId() + " by " + late.days(), late.pieces(), Integer::sum);
    }
    if (!derived.equals(said)) {
      findings.firing(
          WeekRule.LATENESS_WRONG,
          "",
          "The week says that late are " + said + " days, but late are " + derived + ".");
    }
  }
}
