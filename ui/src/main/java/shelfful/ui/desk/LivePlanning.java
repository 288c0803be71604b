package shelfful.ui.desk;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import shelfful.app.FaultReport;
import shelfful.app.PlanListener;
import shelfful.app.Planning;
import shelfful.app.SearchLength;
import shelfful.inspect.InspectedLoad;
import shelfful.ui.task.TaskRunner;

/**
 * One planning that is watched. A better load is drawn where it is found and handed to the screen;
 * when the screen is behind, it gets only the latest. Ends by itself when nothing better was found
 * for ten seconds.
 */
final class LivePlanning implements PlanListener {
  private static final Duration LOOK = Duration.ofSeconds(1);
  private static final int PATIENCE = 10;

  /** Nobody reads more than two figures a second. */
  private static final Duration REST = Duration.ofMillis(500);

  /** Planning waits for the screen this long at most, so that both do not want one processor. */
  private static final Duration ASIDE = Duration.ofMillis(200);

  private final Planning planning;
  private final TaskRunner tasks;
  private final Watcher watcher;
  private final Function<InspectedLoad, ShownLoad> drawing;
  private final AtomicReference<ShownLoad> latest = new AtomicReference<>();
  private int quiet;
  private boolean resting;
  private boolean over;
  private boolean gaveUp;

  /**
   * Not started yet.
   *
   * @param drawing draws a load with the pins and locks there are, away from the screen's thread
   */
  LivePlanning(
      Planning planning,
      TaskRunner tasks,
      Watcher watcher,
      Function<InspectedLoad, ShownLoad> drawing) {
    this.planning = planning;
    this.tasks = tasks;
    this.watcher = watcher;
    this.drawing = drawing;
  }

  /** Who is told on the screen's thread. */
  interface Watcher {
    void better(LivePlanning planning, ShownLoad load);

    void refused(LivePlanning planning);

    void ended(LivePlanning planning, Optional<ShownLoad> best);

    void failed(LivePlanning planning, Throwable fault);
  }

  /** Starts, once. */
  void start(SearchLength length) {
    tasks.after(LOOK, this::look);
    tasks.start(
        () -> planning.run(length, this).map(drawing),
        best -> {
          over = true;
          watcher.ended(this, best);
        },
        fault -> {
          over = true;
          watcher.failed(this, fault);
        });
  }

  private void look() {
    if (over) {
      return;
    }
    quiet++;
    if (quiet == PATIENCE) {
      gaveUp = true;
      stop();
    }
    tasks.after(LOOK, this::look);
  }

  /** Whether it ended for want of anything better. */
  boolean hasGivenUp() {
    return gaveUp;
  }

  /** Ends soon; the best load is kept. */
  void stop() {
    planning.stop();
  }

  @Override
  public void better(InspectedLoad load) {
    if (latest.getAndSet(drawing.apply(load)) == null) {
      tasks.showAndStandAside(this::tellSoon, ASIDE);
    }
  }

  /** At once when nothing was told just before, so that the first plan does not wait. */
  private void tellSoon() {
    quiet = 0;
    if (!resting) {
      tell();
    }
  }

  private void tell() {
    ShownLoad load = latest.getAndSet(null);
    resting = load != null && !over;
    if (resting) {
      quiet = 0;
      tasks.after(REST, this::tell);
      watcher.better(this, load);
    }
  }

  @Override
  public void betweenSteps() {
    tasks.giveWay();
  }

  @Override
  public void refused(FaultReport report) {
    tasks.show(() -> watcher.refused(this));
  }
}
