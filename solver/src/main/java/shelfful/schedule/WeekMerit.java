package shelfful.schedule;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shelfful.schedule.RealFiring.Going;
import shelfful.ware.FiringKind;
import shelfful.week.Hold;
import shelfful.week.WareLine;

/**
 * How good a week that was made real is, goal by goal as in {@link WeekLevels}; more is better.
 *
 * @param levels none of them positive but the fullness
 */
record WeekMerit(List<Long> levels) implements Comparable<WeekMerit> {
  private static final int HOUR = 60;
  private static final int TENTHS = 10;

  WeekMerit {
    levels = List.copyOf(levels);
  }

  /** Of a week; room is measured by what a kilnful was first thought to be. */
  static WeekMerit of(Ground ground, RoomBook room, Rollout.Rolled rolled) {
    return new Reckoner(ground, room, rolled).merit();
  }

  @Override
  public int compareTo(WeekMerit other) {
    for (int level = 0; level < levels.size(); level++) {
      int order = Long.compare(levels.get(level), other.levels.get(level));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  private static final class Reckoner {
    private final Ground ground;
    private final RoomBook room;
    private final Rollout.Rolled rolled;
    private final long[] levels = new long[WeekLevels.COUNT];
    private final Map<String, Set<Object>> places = new HashMap<>();

    Reckoner(Ground ground, RoomBook room, Rollout.Rolled rolled) {
      this.ground = ground;
      this.room = room;
      this.rolled = rolled;
    }

    WeekMerit merit() {
      rolled.firings().forEach(this::firing);
      for (Chunk chunk : rolled.open()) {
        for (FiringKind kind : FiringKind.values()) {
          if (chunk.needs(kind)) {
            waits(chunk, kind);
          }
        }
      }
      places.values().forEach(at -> levels[WeekLevels.SPLIT] -= at.size() - 1L);
      return new WeekMerit(Arrays.stream(levels).boxed().toList());
    }

    private void firing(RealFiring firing) {
      FiringKind kind = firing.program().program().kind();
      long used = 0;
      for (Going going : firing.going()) {
        used +=
            (long) going.numbers().size()
                * room.estimate(going.lot().kind(kind).orElseThrow(), firing.program().kiln());
        goes(firing, going, kind);
      }
      if (firing.held().isEmpty()) {
        levels[WeekLevels.FIRINGS]--;
      }
      long tenths = used * TENTHS / RoomEstimate.WHOLE;
      levels[WeekLevels.FULL] += tenths * tenths;
    }

    private void goes(RealFiring firing, Going going, FiringKind kind) {
      long day = ground.clock().day(firing.times().unpacked());
      int units = going.numbers().size();
      for (WareLine line : going.lot().going(kind)) {
        levels[WeekLevels.FLOW] -= firing.times().unpacked() / HOUR * units;
        if (line.isFinishedBy(kind) && line.batch().due().isPresent()) {
          long due = ground.clock().day(line.batch().due().get());
          levels[WeekLevels.LATE] -= Math.max(0, day - due) * units;
        }
        place(line, kind, firing);
      }
      boolean fixed = firing.held().filter(held -> held.hold() == Hold.ALL).isPresent();
      for (int number : fixed ? List.<Integer>of() : going.numbers()) {
        Share.KilnDay before = ground.earlier(going.lot(), number, kind);
        long loads = ground.clock().day(firing.times().loads());
        if (before.kiln() >= 0
            && !before.equals(new Share.KilnDay(firing.program().kiln(), loads))) {
          levels[WeekLevels.CHANGED] -= going.lot().going(kind).size();
        }
      }
    }

    private void waits(Chunk chunk, FiringKind kind) {
      long day = ground.clock().day(ground.clock().end());
      int units = chunk.numbers().size();
      for (WareLine line : chunk.lot().going(kind)) {
        levels[WeekLevels.WAITING] -= units;
        if (line.isFinishedBy(kind) && line.batch().due().isPresent()) {
          long due = ground.clock().day(line.batch().due().get());
          levels[WeekLevels.LATE] -= due < day ? (day - due + 1) * units : 0;
        }
        place(line, kind, "waits");
      }
      for (int number : chunk.numbers()) {
        levels[WeekLevels.CHANGED] -=
            ground.earlier(chunk.lot(), number, kind).kiln() >= 0
                ? chunk.lot().going(kind).size()
                : 0;
      }
    }

    private void place(WareLine line, FiringKind kind, Object where) {
      line.batch()
          .order()
          .filter(ground.request().together()::contains)
          .ifPresent(
              order -> places.computeIfAbsent(kind + " " + order, any -> identitySet()).add(where));
    }

    private static Set<Object> identitySet() {
      return Collections.newSetFromMap(new IdentityHashMap<>());
    }
  }
}
