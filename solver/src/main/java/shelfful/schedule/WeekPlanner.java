package shelfful.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * The door to planning weeks: one request, one run. A first week comes as soon as its loads are
 * planned; then the whole week is looked at again, round after round, and every better one is told.
 * Loads are judged as they are made; the week itself is not.
 *
 * <p>By rounds the weeks are a pure function of the request, and all happens on the thread that
 * calls {@link #plan}. Until a time two threads of its own plan side by side; weeks are told on the
 * thread that calls {@link #planUntil}. {@link #stop()} may be called from any thread.
 */
public final class WeekPlanner {
  private final Ground ground;
  private final LoadSource source;
  private final List<WeekSearch> searches;
  private final Held held;
  private volatile boolean stopped;

  /** A planner that takes its loads from a source. */
  public WeekPlanner(WeekRequest request, LoadSource source) {
    this(request, source, EnvironmentMode.REPRODUCIBLE);
  }

  WeekPlanner(WeekRequest request, LoadSource source, EnvironmentMode mode) {
    this.ground = new Ground(request);
    this.source = source;
    this.searches = List.of(new WeekSearch(mode), new WeekSearch(mode));
    this.held = Held.of(ground);
  }

  /** Ends planning soon; the best week so far is kept. */
  public void stop() {
    stopped = true;
    searches.forEach(WeekSearch::end);
  }

  /**
   * Plans, telling of every better week on the way.
   *
   * @param enough asked from the planning threads before each load after the first plan; with it
   *     the rounds of the request do not count
   */
  public WeekPlan planUntil(BooleanSupplier enough, WeekWatch watch) {
    return new SideBySide(ground, held, searches, source, () -> stopped, enough).run(watch);
  }

  /** Plans as many rounds as the request says, telling of every better week on the way. */
  public WeekPlan plan(WeekWatch watch) {
    RoomBook room = new RoomBook(ground.request(), ground.kinds());
    LoadBook loads =
        new LoadBook(
            ground.request().studio(), source, ground.request().effort().seed(), Optional.empty());
    Pace pace = new Pace(ground);
    List<RealFiring> earlier = Held.earlier(ground);
    WeekComposer composer = new WeekComposer(ground, room);
    List<WeekPlan> better = new ArrayList<>();
    BestWeek best =
        new BestWeek(
            ground,
            room,
            week -> {
              better.add(composer.plan(week));
              watch.better(better.get(better.size() - 1));
            });
    best.offerAtLeast(rollout(room, loads).run(earlier, pace.first(earlier.isEmpty())));
    int rounds = ground.request().effort().rounds();
    for (int round = 1; round <= rounds && !stopped; round++) {
      best.offer(rollout(room, loads).run(best.next().firings(), pace.counted(round)));
    }
    return better.get(better.size() - 1);
  }

  private Rollout rollout(RoomBook room, LoadBook loads) {
    return new Rollout(ground, room, loads, searches.get(0), held, () -> stopped);
  }
}
