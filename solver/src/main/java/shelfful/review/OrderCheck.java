package shelfful.review;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import shelfful.ware.FiringKind;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/** Which orders that asked to go together do not. */
final class OrderCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    Map<String, Set<String>> places = new TreeMap<>();
    for (WareLine line : plan.request().lines()) {
      String order = line.batch().order().filter(plan.request().together()::contains).orElse("");
      if (!order.isEmpty()) {
        for (FiringKind kind : line.needs()) {
          Set<String> at = places.computeIfAbsent(order + "|" + kind, any -> new TreeSet<>());
          for (int number = 1; number <= line.batch().quantity(); number++) {
            at.add(
                ways.firings(line.batch().id(), number, kind).stream()
                    .map(firing -> firing.id())
                    .findFirst()
                    .orElse("(waits)"));
          }
        }
      }
    }
    places.forEach(
        (what, at) -> {
          if (at.size() > 1) {
            String order = what.substring(0, what.lastIndexOf('|'));
            findings.firing(
                WeekRule.ORDER_NOT_TOGETHER,
                "",
                "The order " + order + " asked to go together, but goes in " + at + ".");
          }
        });
  }
}
