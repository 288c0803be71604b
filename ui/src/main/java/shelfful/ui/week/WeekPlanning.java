package shelfful.ui.week;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.review.InspectedWeek;
import shelfful.ui.task.TaskRunner;
import shelfful.week.WeekEffort;
import shelfful.week.WeekRequest;

/**
 * Plans a week in the background; every better one is handed over at once. One planning at a time:
 * whoever began an earlier one hears no more of it.
 */
final class WeekPlanning {
  /** How many steps each load is searched once every firing has one. */
  private static final int LOAD_STEPS = 60;

  private final TaskRunner tasks;
  private final Optional<Duration> length;
  private final ReadOnlyBooleanWrapper goesOn = new ReadOnlyBooleanWrapper();
  private Running running = new Running();
  private int turn;

  /** A planning that can be stopped before it has begun. */
  private static final class Running {
    private final AtomicReference<PlanAWeek> planning = new AtomicReference<>();
    private volatile boolean stopped;

    Optional<InspectedWeek> run(
        WeekRequest request, Optional<Duration> length, WeekListener listener) {
      PlanAWeek made = new PlanAWeek(request);
      planning.set(made);
      if (stopped) {
        made.stop();
      }
      return length.isPresent() ? made.run(length.get(), listener) : made.run(listener);
    }

    void stop() {
      stopped = true;
      Optional.ofNullable(planning.get()).ifPresent(PlanAWeek::stop);
    }
  }

  /** Who is told, on the screen's thread. */
  interface Taker {
    /** Better than any before of this planning. */
    void better(InspectedWeek week);

    /** It is over. */
    void over(boolean stopped);

    /** A fault of the program. */
    void failed(Throwable fault);
  }

  /**
   * Plans nothing yet.
   *
   * @param length how long each planning lasts; empty for the effort of what is asked
   */
  WeekPlanning(TaskRunner tasks, Optional<Duration> length) {
    this.tasks = tasks;
    this.length = length;
  }

  ReadOnlyBooleanProperty goesOn() {
    return goesOn.getReadOnlyProperty();
  }

  /** Begins; an earlier one ends unheard. */
  void start(WeekRequest request, Taker taker) {
    leave();
    int mine = turn;
    Running now = new Running();
    running = now;
    goesOn.set(true);
    WeekRequest asked = length.isPresent() ? searched(request) : request;
    tasks.start(
        () -> now.run(asked, length, new Listening(mine, taker)),
        best -> end(mine, () -> taker.over(now.stopped)),
        fault -> end(mine, () -> taker.failed(fault)));
  }

  /** On the thread that plans, which lets the screen go first. */
  private final class Listening implements WeekListener {
    private final int mine;
    private final Taker taker;

    Listening(int mine, Taker taker) {
      this.mine = mine;
      this.taker = taker;
    }

    @Override
    public void better(InspectedWeek week) {
      tasks.show(() -> hand(mine, week, taker));
    }

    @Override
    public void betweenSteps() {
      tasks.giveWay();
    }
  }

  private static WeekRequest searched(WeekRequest request) {
    WeekEffort effort = request.effort();
    return request.with(new WeekEffort(effort.seed(), effort.rounds(), LOAD_STEPS));
  }

  private void hand(int mine, InspectedWeek week, Taker taker) {
    if (mine == turn) {
      taker.better(week);
    }
  }

  private void end(int mine, Runnable then) {
    if (mine == turn) {
      goesOn.set(false);
      then.run();
    }
  }

  /** Ends the planning within a second; the best week so far stays. */
  void stop() {
    running.stop();
  }

  /** Ends the planning, and nobody hears of it any more. */
  void leave() {
    turn++;
    running.stop();
    goesOn.set(false);
  }
}
