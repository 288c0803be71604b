package shelfful.app;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import shelfful.app.FiringPlace.Hindrance;
import shelfful.app.FiringPlace.Kind;
import shelfful.ware.FiringKind;
import shelfful.week.FiringTimes;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/** When the ware of one firing is ready for it, and by when it is needed again. */
final class WareTimes {
  private final WeekPlan plan;
  private final TreeMap<LocalDateTime, Integer> ready = new TreeMap<>();
  private final Map<PlannedFiring, Integer> next = new HashMap<>();

  WareTimes(WeekPlan plan, PlannedFiring firing) {
    this.plan = plan;
    FiringKind kind = kind(firing);
    Map<String, PlannedFiring> others = others(kind);
    for (Portion portion : firing.portions()) {
      WareLine line = plan.request().line(portion.batchId()).orElseThrow();
      for (int number : portion.numbers()) {
        Optional<PlannedFiring> other =
            Optional.ofNullable(others.get(portion.batchId() + "#" + number));
        if (kind == FiringKind.BISQUE) {
          other.ifPresent(glaze -> next.merge(glaze, 1, Integer::sum));
        }
        ready(line, kind, other).ifPresent(time -> ready.merge(time, 1, Integer::sum));
      }
    }
  }

  private FiringKind kind(PlannedFiring firing) {
    return plan.request().program(firing).orElseThrow().kind();
  }

  /** The firing of the other kind that each piece is in. */
  private Map<String, PlannedFiring> others(FiringKind kind) {
    Map<String, PlannedFiring> others = new HashMap<>();
    for (PlannedFiring firing : plan.firings()) {
      if (kind(firing) != kind) {
        firing
            .portions()
            .forEach(p -> p.numbers().forEach(n -> others.put(p.batchId() + "#" + n, firing)));
      }
    }
    return others;
  }

  private Optional<LocalDateTime> ready(
      WareLine line, FiringKind kind, Optional<PlannedFiring> bisque) {
    if (line.needs().isEmpty() || line.needs().get(0) == kind) {
      return Optional.of(line.firstReady(plan.request().start(), plan.request().pauses()));
    }
    int days = plan.request().pauses().glazingDays();
    return bisque.map(firing -> firing.times().unpacked().plusDays(days));
  }

  /** What the ware has against these times. */
  List<Hindrance> hindrances(FiringTimes times) {
    List<Hindrance> hindrances = new ArrayList<>();
    Map<LocalDateTime, Integer> late = ready.tailMap(times.loads(), false);
    if (!late.isEmpty()) {
      int pieces = late.values().stream().mapToInt(Integer::intValue).sum();
      hindrances.add(
          new Hindrance(Kind.WARE_NOT_READY, "", pieces, times.loads(), ready.lastKey()));
    }
    LocalDateTime glazed = times.unpacked().plusDays(plan.request().pauses().glazingDays());
    for (PlannedFiring firing : plan.firings()) {
      if (next.containsKey(firing) && firing.times().loads().isBefore(glazed)) {
        LocalDateTime loads = firing.times().loads();
        hindrances.add(
            new Hindrance(
                Kind.TOO_LATE_FOR_THE_NEXT, firing.id(), next.get(firing), glazed, loads));
      }
    }
    return hindrances;
  }
}
