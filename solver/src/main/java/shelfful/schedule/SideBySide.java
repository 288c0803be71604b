package shelfful.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.BooleanSupplier;
import shelfful.week.WeekPlan;

/**
 * Rounds of a week until a time is over, made by two threads side by side. Each has a search of its
 * own; loads, what is known of room and the best week are shared, so a round begins from the best
 * week of both and no load is planned twice. Better weeks are told on the thread that asked.
 */
final class SideBySide {
  /** Every so many rounds one may make what is only as good: from there another way may lead on. */
  private static final int AS_GOOD = 4;

  private final Ground ground;
  private final Held held;
  private final List<WeekSearch> searches;
  private final RoomBook quickRoom;
  private final RoomBook room;
  private final LoadBook loads;
  private final Pace pace;
  private final Confidence confidence = new Confidence();
  private final BooleanSupplier stopped;
  private final BooleanSupplier over;
  private final BlockingQueue<Optional<Rollout.Rolled>> told = new LinkedBlockingQueue<>();
  private final BestWeek best;
  private volatile boolean broken;

  /**
   * Two threads.
   *
   * @param searches one for each
   * @param stopped whether somebody ended planning; the first week is finished unless it is
   * @param enough whether the time is over
   */
  SideBySide(
      Ground ground,
      Held held,
      List<WeekSearch> searches,
      LoadSource source,
      BooleanSupplier stopped,
      BooleanSupplier enough) {
    this.ground = ground;
    this.held = held;
    this.searches = List.copyOf(searches);
    this.quickRoom = new RoomBook(ground.request(), ground.kinds());
    this.room = quickRoom.forSearched();
    this.loads =
        new LoadBook(
            ground.request().studio(),
            source,
            ground.request().effort().seed(),
            Optional.of(new FavouritePlans()));
    this.pace = new Pace(ground);
    this.stopped = () -> broken || stopped.getAsBoolean();
    this.over = () -> this.stopped.getAsBoolean() || enough.getAsBoolean();
    this.best = new BestWeek(ground, room, week -> told.add(Optional.of(week)));
  }

  WeekPlan run(WeekWatch watch) {
    ExecutorService workers = Executors.newFixedThreadPool(searches.size(), SideBySide::worker);
    List<Future<?>> running = new ArrayList<>();
    for (int i = 0; i < searches.size(); i++) {
      boolean first = i == 0;
      WeekSearch search = searches.get(i);
      running.add(workers.submit(() -> work(search, first)));
    }
    try {
      return tell(watch, running);
    } finally {
      end();
      workers.shutdown();
    }
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "planning a week");
    thread.setDaemon(true);
    return thread;
  }

  private void work(WeekSearch search, boolean first) {
    try {
      begin(search, first);
      while (!over.getAsBoolean()) {
        round(search);
      }
    } catch (RuntimeException | Error fault) {
      end();
      throw fault;
    } finally {
      told.add(Optional.empty());
    }
  }

  /** One makes the first week with the first loads that come, the other begins a searched one. */
  private void begin(WeekSearch search, boolean first) {
    List<RealFiring> earlier = Held.earlier(ground);
    if (first) {
      Rollout.Effort effort = pace.first(earlier.isEmpty());
      RoomBook book = effort.loadSteps() == 0 ? quickRoom : room;
      Rollout rollout = new Rollout(ground, book, loads, search, held, stopped);
      best.offerAtLeast(rollout.run(earlier, effort));
    } else {
      Rollout rollout = new Rollout(ground, room, loads, search, held, over);
      rollout.against(against(true));
      best.offer(rollout.run(earlier, pace.timed(0, 0)));
    }
  }

  private void round(WeekSearch search) {
    BestWeek.Task task = best.next();
    int number = task.number();
    Rollout rollout = new Rollout(ground, room, loads, search, held, over);
    rollout.against(against(number % AS_GOOD == 0));
    best.offer(rollout.run(task.firings(), pace.timed(number, task.inVain())));
  }

  private Rollout.Against against(boolean mayEqual) {
    return new Rollout.Against(new Prospect(ground, room, best::merit, mayEqual), confidence);
  }

  private void end() {
    broken = true;
    searches.forEach(WeekSearch::end);
  }

  /** Until both are done. */
  private WeekPlan tell(WeekWatch watch, List<Future<?>> running) {
    WeekComposer composer = new WeekComposer(ground, room);
    WeekPlan plan = null;
    int left = running.size();
    while (left > 0) {
      Optional<Rollout.Rolled> week = next();
      if (week.isPresent()) {
        plan = composer.plan(week.get());
        watch.better(plan);
      } else {
        left--;
      }
    }
    for (Future<?> one : running) {
      check(one);
    }
    return plan;
  }

  /** An interruption is taken as a wish to end; the best week is still handed out. */
  private Optional<Rollout.Rolled> next() {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return told.take();
        } catch (InterruptedException wish) {
          interrupted = true;
          end();
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private static void check(Future<?> work) {
    try {
      work.get();
    } catch (ExecutionException fault) {
      throw new IllegalStateException("planning the week failed", fault.getCause());
    } catch (InterruptedException wish) {
      Thread.currentThread().interrupt();
    }
  }
}
