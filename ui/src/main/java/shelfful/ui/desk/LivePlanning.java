package shelfful.ui.desk;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import shelfful.app.FaultReport;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.ui.task.TaskRunner;

/**
 * One planning that is watched. A better load is drawn where it is found and handed to the screen;
 * when the screen is behind, it gets only the latest.
 */
final class LivePlanning implements PlanListener {
  private final PlanALoad planning;
  private final TaskRunner tasks;
  private final Watcher watcher;
  private final Function<InspectedLoad, ShownLoad> drawing;
  private final AtomicReference<ShownLoad> latest = new AtomicReference<>();

  LivePlanning(
      LoadRequest request,
      TaskRunner tasks,
      Watcher watcher,
      Function<InspectedLoad, ShownLoad> drawing) {
    this.drawing = drawing;
    this.planning = new PlanALoad(request);
    this.tasks = tasks;
    this.watcher = watcher;
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
    tasks.start(
        () -> planning.run(length, this).map(drawing),
        best -> watcher.ended(this, best),
        fault -> watcher.failed(this, fault));
  }

  /** Ends soon; the best load is kept. */
  void stop() {
    planning.stop();
  }

  @Override
  public void better(InspectedLoad load) {
    if (latest.getAndSet(drawing.apply(load)) == null) {
      tasks.show(this::tell);
    }
  }

  private void tell() {
    watcher.better(this, latest.getAndSet(null));
  }

  @Override
  public void refused(FaultReport report) {
    tasks.show(() -> watcher.refused(this));
  }
}
