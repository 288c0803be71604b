package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The best week made real so far. May be used by two that look for better ones at once. */
final class BestWeek {
  /** Every so many rounds begin from nothing, lest the search stay in one corner. */
  private static final int FROM_NOTHING = 3;

  private final Ground ground;
  private final RoomBook room;
  private final Consumer<Rollout.Rolled> told;
  private Rollout.Rolled best;
  private WeekMerit merit;
  private int rounds;
  private int better;

  /**
   * Nothing yet.
   *
   * @param told every better week, in their order
   */
  BestWeek(Ground ground, RoomBook room, Consumer<Rollout.Rolled> told) {
    this.ground = ground;
    this.room = room;
    this.told = told;
  }

  /**
   * Where a round begins.
   *
   * @param number of the round, from 1
   * @param inVain rounds begun since the last better week
   * @param firings to begin from, those of the best week; empty to begin from nothing
   */
  record Task(int number, int inVain, List<RealFiring> firings) {
    Task {
      firings = List.copyOf(firings);
    }
  }

  synchronized Task next() {
    rounds++;
    boolean fromNothing = best == null || rounds % FROM_NOTHING == 0;
    return new Task(rounds, rounds - 1 - better, fromNothing ? List.of() : best.firings());
  }

  /** How good it is; empty before the first. */
  synchronized Optional<WeekMerit> merit() {
    return Optional.ofNullable(merit);
  }

  /** Keeps a week if it is whole and better. */
  synchronized void offer(Rollout.Rolled week) {
    if (!week.complete()) {
      return;
    }
    WeekMerit found = WeekMerit.of(ground, room, week);
    if (merit == null || found.compareTo(merit) > 0) {
      keep(week, found);
    }
  }

  /** Keeps a week that was broken off, when there is no other. */
  synchronized void offerAtLeast(Rollout.Rolled week) {
    if (merit == null) {
      keep(week, WeekMerit.of(ground, room, week));
    } else {
      offer(week);
    }
  }

  private void keep(Rollout.Rolled week, WeekMerit found) {
    best = week;
    merit = found;
    better = rounds;
    told.accept(week);
  }
}
