package shelfful.ui.week;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import shelfful.cost.FiringCost;
import shelfful.cost.WeekCost;
import shelfful.ui.words.Words;
import shelfful.week.Late;
import shelfful.week.PlannedFiring;
import shelfful.week.Tariff;
import shelfful.week.WeekPlan;

/** A whole week in figures and words. */
final class TotalWords {
  private static final double MINUTES = 60;

  private TotalWords() {}

  static List<String> of(WeekPlan plan, Words words) {
    List<String> lines = new ArrayList<>();
    int places = plan.firings().stream().mapToInt(PlannedFiring::pieces).sum();
    lines.add(
        words.of("week.totalFirings", plan.firings().size(), places, plan.request().pieces()));
    lines.add(words.of("week.totalLate", late(plan), waiting(plan)));
    WeekCost cost = WeekCost.of(plan);
    Duration handsOn =
        cost.firings().stream().map(FiringCost::handsOn).reduce(Duration.ZERO, Duration::plus);
    lines.add(words.of("week.totalHours", handsOn.toMinutes() / MINUTES));
    lines.add(energy(cost, words));
    lines.add(money(plan, cost, words));
    return lines;
  }

  static int late(WeekPlan plan) {
    return plan.late().stream().mapToInt(Late::pieces).sum();
  }

  static int waiting(WeekPlan plan) {
    return plan.waiting().stream().mapToInt(one -> one.portion().size()).sum();
  }

  private static String energy(WeekCost cost, Words words) {
    if (cost.kilowattHours().isEmpty()) {
      return words.of("week.totalEnergyUnknown");
    }
    String key = cost.estimated() ? "week.totalEnergyEstimate" : "week.totalEnergyMeter";
    return words.of(key, cost.kilowattHours().getAsDouble());
  }

  private static String money(WeekPlan plan, WeekCost cost, Words words) {
    if (cost.money().isEmpty()) {
      return words.of("week.totalMoneyUnknown");
    }
    String currency = plan.request().tariff().map(Tariff::currency).orElse("");
    String key = cost.estimated() ? "week.totalMoneyEstimate" : "week.totalMoneyMeter";
    return words.of(key, cost.money().getAsDouble(), currency);
  }
}
