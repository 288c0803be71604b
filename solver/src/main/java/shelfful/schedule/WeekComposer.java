package shelfful.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import shelfful.schedule.RealFiring.Going;
import shelfful.ware.FiringKind;
import shelfful.week.FiringTimes;
import shelfful.week.Hold;
import shelfful.week.Lateness;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/** Writes a week that was made real down as a plan. */
final class WeekComposer {
  private final Ground ground;
  private final WaitingWords waiting;

  WeekComposer(Ground ground, RoomBook room) {
    this.ground = ground;
    this.waiting = new WaitingWords(ground, room);
  }

  WeekPlan plan(Rollout.Rolled rolled) {
    List<RealFiring> ordered =
        rolled.firings().stream()
            .sorted(
                Comparator.comparingLong((RealFiring firing) -> firing.times().loads())
                    .thenComparing(firing -> firing.program().kilnId()))
            .toList();
    List<String> names = new FiringNames(ground.request().earlier()).of(ordered);
    List<PlannedFiring> firings = new ArrayList<>();
    for (int i = 0; i < ordered.size(); i++) {
      firings.add(planned(names.get(i), ordered.get(i)));
    }
    return new WeekPlan(
        ground.request(),
        firings,
        waiting.of(rolled.open(), rolled.complete()),
        Lateness.of(ground.request(), firings));
  }

  private PlannedFiring planned(String name, RealFiring firing) {
    if (firing.held().filter(held -> held.hold() == Hold.ALL).isPresent()) {
      return firing.held().get();
    }
    MinuteClock clock = ground.clock();
    FiringTimes times =
        FiringTimes.of(
            firing.program().program(),
            clock.time(firing.times().loads()),
            clock.time(firing.times().unpacks()));
    return new PlannedFiring(
        name,
        firing.program().kilnId(),
        firing.program().program().id(),
        firing.held().map(PlannedFiring::times).orElse(times),
        portions(firing),
        firing.load(),
        firing.held().map(PlannedFiring::hold).orElse(Hold.FREE));
  }

  /** In the order of the list, as the load has its batches. */
  private List<Portion> portions(RealFiring firing) {
    FiringKind kind = firing.program().program().kind();
    Map<String, TreeSet<Integer>> numbers = new TreeMap<>();
    for (Going going : firing.going()) {
      for (WareLine line : going.lot().going(kind)) {
        numbers.computeIfAbsent(line.batch().id(), any -> new TreeSet<>()).addAll(going.numbers());
      }
    }
    return ground.request().lines().stream()
        .map(line -> line.batch().id())
        .filter(numbers::containsKey)
        .map(id -> new Portion(id, List.copyOf(numbers.get(id))))
        .toList();
  }
}
