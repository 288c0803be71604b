package shelfful.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.ware.FiringKind;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.WeekPlan;

/** Which firings each single piece goes through. */
final class Ways {
  private final Map<String, List<PlannedFiring>> bisque = new HashMap<>();
  private final Map<String, List<PlannedFiring>> glaze = new HashMap<>();

  Ways(WeekPlan plan) {
    for (PlannedFiring firing : plan.firings()) {
      FiringKind kind = kind(plan, firing);
      for (Portion portion : firing.portions()) {
        for (int number : portion.numbers()) {
          of(kind)
              .computeIfAbsent(portion.batchId() + "#" + number, any -> new ArrayList<>())
              .add(firing);
        }
      }
    }
  }

  static FiringKind kind(WeekPlan plan, PlannedFiring firing) {
    return plan.request().program(firing).orElseThrow().kind();
  }

  /** The firings of a kind that a piece is in; none, one, or more where the week is wrong. */
  List<PlannedFiring> firings(String batchId, int number, FiringKind kind) {
    return of(kind).getOrDefault(batchId + "#" + number, List.of());
  }

  private Map<String, List<PlannedFiring>> of(FiringKind kind) {
    return kind == FiringKind.BISQUE ? bisque : glaze;
  }
}
