package shelfful.schedule;

import java.util.List;
import shelfful.week.WeekEffort;

/** How hard each round of planning a week looks. */
final class Pace {
  private static final int FIRST = 8_000;
  private static final int FIRST_AGAIN = 600;
  private static final int ROUND = 20_000;
  private static final int ROUND_AGAIN = 2_000;
  private static final int TIMED_AGAIN = 3_000;
  private static final long SEED_STEP = 7919;

  /** In time, loads are searched at first for this part of the steps that were asked. */
  private static final int LIGHT = 4;

  /** So many rounds without a better week, and loads are searched for another such part. */
  private static final int PATIENCE = 10;

  private static final List<Integer> SMALL = List.of(175, 150, 125, 200);
  private static final List<Integer> LARGE = List.of(100, 100, 125, 110);

  /** What a searched load holds is known better. */
  private static final List<Integer> LARGE_TIMED = List.of(116, 108, 100, 104);

  private final WeekEffort asked;
  private final boolean small;

  Pace(Ground ground) {
    this.asked = ground.request().effort();
    this.small = ground.isSmall();
  }

  /**
   * The round that makes the first week; from nothing it takes the first load that comes for every
   * firing.
   */
  Rollout.Effort first(boolean fromNothing) {
    int steps = fromNothing ? 0 : asked.loadSteps();
    return new Rollout.Effort(FIRST, FIRST_AGAIN, steps, stretch(0), false, asked.seed());
  }

  /**
   * A round where only their number counts. Every other is made with quick loads: they show whether
   * a shape is worth the time.
   */
  Rollout.Effort counted(int round) {
    int steps = round % 2 == 0 ? asked.loadSteps() : 0;
    return new Rollout.Effort(ROUND, ROUND_AGAIN, steps, stretch(round), false, seed(round));
  }

  /**
   * A round where time is short: a light search already tells how much goes in.
   *
   * @param inVain rounds since the last better week
   */
  Rollout.Effort timed(int round, int inVain) {
    int light = -Math.floorDiv(-asked.loadSteps(), LIGHT);
    int parts = 1 + inVain / PATIENCE;
    int steps = (int) Math.min(asked.loadSteps(), (long) light * parts);
    return new Rollout.Effort(
        ROUND, TIMED_AGAIN, steps, timedStretch(round), steps > 0, seed(round));
  }

  private long seed(int round) {
    return asked.seed() + SEED_STEP * round;
  }

  private int timedStretch(int round) {
    return small ? stretch(round) : LARGE_TIMED.get(round % LARGE_TIMED.size());
  }

  /** In a small week a piece more or less is a great part of a kilnful, so more is tried. */
  private int stretch(int round) {
    List<Integer> stretches = small ? SMALL : LARGE;
    return stretches.get(round % stretches.size());
  }
}
