package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * Whether a week that is being made real can still be better than the best so far: what was really
 * fired and what the search thinks of the rest, held against it in lateness, what waits and the
 * number of firings. A thought, not a proof: more may go in than was thought.
 */
final class Prospect {
  private static final int LEVELS_THAT_COUNT = WeekLevels.FIRINGS + 1;

  private final Ground ground;
  private final RoomBook room;
  private final Supplier<Optional<WeekMerit>> toBeat;
  private final boolean mayEqual;

  /**
   * A prospect.
   *
   * @param toBeat the best week so far, which may become better meanwhile; nothing is hopeless
   *     before the first
   * @param mayEqual whether one that is as good in these three is worth making
   */
  Prospect(Ground ground, RoomBook room, Supplier<Optional<WeekMerit>> toBeat, boolean mayEqual) {
    this.ground = ground;
    this.room = room;
    this.toBeat = toBeat;
    this.mayEqual = mayEqual;
  }

  boolean isHopeless(List<RealFiring> made, Reckoning rest) {
    return toBeat.get().filter(best -> isHopeless(made, rest, best)).isPresent();
  }

  /** Whether it is though no firing more were needed, for it has too many. */
  boolean hasTooMany(List<RealFiring> made) {
    return toBeat.get().filter(best -> hasTooMany(made, best)).isPresent();
  }

  private boolean hasTooMany(List<RealFiring> made, WeekMerit best) {
    WeekMerit sure = WeekMerit.of(ground, room, new Rollout.Rolled(made, List.of(), false));
    long more = best.levels().get(WeekLevels.FIRINGS) - sure.levels().get(WeekLevels.FIRINGS);
    return more > 0 || more == 0 && !mayEqual;
  }

  private boolean isHopeless(List<RealFiring> made, Reckoning rest, WeekMerit best) {
    WeekMerit sure = WeekMerit.of(ground, room, new Rollout.Rolled(made, List.of(), false));
    BendableLongScore thought = WeekScorer.score(rest);
    for (int level = 0; level < LEVELS_THAT_COUNT; level++) {
      long sum = sure.levels().get(level) + thought.softScore(level);
      long least = best.levels().get(level);
      if (sum != least) {
        return sum < least;
      }
    }
    return !mayEqual;
  }
}
