package shelfful.schedule;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.week.WeekEffort;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * The door to planning weeks: one request, one run. A first week comes as soon as its loads are
 * planned; then the whole week is looked at again, round after round, and every better one is told.
 * Loads are judged as they are made; the week itself is not.
 *
 * <p>Without a clock the weeks are a pure function of the request. {@link #stop()} may be called
 * from any thread; all else happens on the thread that calls {@link #plan}.
 */
public final class WeekPlanner {
  private static final int FIRST = 8_000;
  private static final int FIRST_AGAIN = 600;
  private static final int ROUND = 20_000;
  private static final int ROUND_AGAIN = 2_000;

  /** Up to this round loads are searched for a quarter of the steps when time ends planning. */
  private static final int LAST_LIGHT_ROUND = 8;

  private static final int LIGHT = 4;

  private static final List<Integer> SMALL = List.of(175, 150, 125, 200);
  private static final List<Integer> LARGE = List.of(100, 100, 125, 110);

  private final Ground ground;
  private final RoomBook room;
  private final LoadBook loads;
  private final WeekSearch search;
  private final Held held;
  private volatile boolean stopped;

  /** A planner that takes its loads from a source. */
  public WeekPlanner(WeekRequest request, LoadSource source) {
    this(request, source, EnvironmentMode.REPRODUCIBLE);
  }

  WeekPlanner(WeekRequest request, LoadSource source, EnvironmentMode mode) {
    this.ground = new Ground(request);
    this.room = new RoomBook(request, ground.kinds());
    this.loads = new LoadBook(request.studio(), source, request.effort().seed());
    this.search = new WeekSearch(mode);
    this.held = Held.of(ground);
  }

  /** Ends planning soon; the best week so far is kept. */
  public void stop() {
    stopped = true;
    search.end();
  }

  /**
   * Plans, telling of every better week on the way.
   *
   * @param enough asked before each round after the first plan; with it the rounds of the request
   *     do not count
   */
  public WeekPlan planUntil(BooleanSupplier enough, WeekWatch watch) {
    return run(Integer.MAX_VALUE, enough, watch, true);
  }

  /** Plans as many rounds as the request says, telling of every better week on the way. */
  public WeekPlan plan(WeekWatch watch) {
    return run(ground.request().effort().rounds(), () -> false, watch, false);
  }

  private WeekPlan run(int rounds, BooleanSupplier enough, WeekWatch watch, boolean timed) {
    long seed = ground.request().effort().seed();
    List<RealFiring> earlier = Held.earlier(ground);
    int steps = earlier.isEmpty() ? 0 : ground.request().effort().loadSteps();
    Rollout.Rolled best =
        rollout(enough, true)
            .run(earlier, new Rollout.Effort(FIRST, FIRST_AGAIN, steps, stretch(0), seed));
    WeekMerit merit = WeekMerit.of(ground, room, best);
    WeekPlan plan = compose(best);
    watch.better(plan);
    for (int round = 1; round <= rounds && !isOver(enough); round++) {
      Rollout.Rolled next = rollout(enough, false).run(before(best, round), effort(round, timed));
      WeekMerit nextMerit = WeekMerit.of(ground, room, next);
      if (next.complete() && nextMerit.compareTo(merit) > 0) {
        best = next;
        merit = nextMerit;
        plan = compose(best);
        watch.better(plan);
      }
    }
    return plan;
  }

  /** Every third round begins from nothing, lest the search stay in one corner. */
  private static List<RealFiring> before(Rollout.Rolled best, int round) {
    return round % 3 == 0 ? List.of() : best.firings();
  }

  /**
   * Every other round is made with quick loads: they show whether a shape is worth the time. Where
   * time is short, a lighter search of the first loads already tells how much goes in.
   */
  private Rollout.Effort effort(int round, boolean timed) {
    WeekEffort asked = ground.request().effort();
    boolean light = timed && round <= LAST_LIGHT_ROUND;
    int full = light ? Math.max(1, asked.loadSteps() / LIGHT) : asked.loadSteps();
    int steps = round % 2 == 0 ? full : 0;
    return new Rollout.Effort(
        ROUND, ROUND_AGAIN, steps, stretch(round), asked.seed() + 7919L * round);
  }

  /** In a small week a piece more or less is a great part of a kilnful, so more is tried. */
  private int stretch(int round) {
    List<Integer> stretches = ground.isSmall() ? SMALL : LARGE;
    return stretches.get(round % stretches.size());
  }

  private WeekPlan compose(Rollout.Rolled rolled) {
    return new WeekComposer(ground, room).plan(rolled);
  }

  private Rollout rollout(BooleanSupplier enough, boolean first) {
    return new Rollout(
        ground, room, loads, search, held, first ? () -> stopped : () -> isOver(enough));
  }

  private boolean isOver(BooleanSupplier enough) {
    return stopped || enough.getAsBoolean();
  }
}
