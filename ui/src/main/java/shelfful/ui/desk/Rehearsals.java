package shelfful.ui.desk;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import shelfful.app.Opened;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.Planning;
import shelfful.app.SearchLength;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.ui.task.TaskRunner;

/**
 * What is gone through before anybody plans: a first plan and a piece in the hand, then a search on
 * as many threads as every planning. Java's compiler wants most of a processor while a search is
 * new to it. Once it has seen one, it no longer does so just when the first plan is to be painted.
 */
final class Rehearsals {
  private static final SearchLength SEARCH = SearchLength.ofTime(Duration.ofSeconds(2));

  private final TaskRunner tasks;
  private final Consumer<Throwable> failed;
  private Optional<Planning> running = Optional.empty();
  private boolean wanted = true;

  /** Not begun. */
  Rehearsals(TaskRunner tasks, Consumer<Throwable> failed) {
    this.tasks = tasks;
    this.failed = failed;
  }

  /**
   * Begins.
   *
   * @param unseen takes the first plan, to paint it where nobody sees it
   */
  void start(Consumer<ShownLoad> unseen) {
    tasks.startIdly(
        Rehearsal::run,
        load -> {
          load.ifPresent(unseen);
          search();
        },
        failed);
  }

  private void search() {
    if (wanted && Demo.request() instanceof Opened.Ready<LoadRequest> ready) {
      Planning planning = new PlanALoad(ready.value());
      running = Optional.of(planning);
      tasks.startIdly(() -> planning.run(SEARCH, new GivingWay(tasks)), found -> {}, failed);
    }
  }

  /** Ends for good, as the processors are wanted for something real. */
  void stop() {
    wanted = false;
    running.ifPresent(Planning::stop);
  }

  private record GivingWay(TaskRunner tasks) implements PlanListener {
    @Override
    public void better(InspectedLoad load) {}

    @Override
    public void betweenSteps() {
      tasks.giveWay();
    }
  }
}
