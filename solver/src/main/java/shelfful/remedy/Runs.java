package shelfful.remedy;

import java.util.Optional;
import shelfful.app.PlanListener;
import shelfful.app.Planning;
import shelfful.app.SearchLength;
import shelfful.inspect.InspectedLoad;

/**
 * The runs of one search for remedies, one after another on one thread. All of them go through
 * here, so that whatever is being planned ends when the search is stopped, and nothing is begun
 * after.
 */
final class Runs {
  private volatile Planning running;
  private volatile boolean stopped;

  /** Ends the run that is going on; later ones are not begun. May be called from any thread. */
  void stop() {
    stopped = true;
    Planning now = running;
    if (now != null) {
      now.stop();
    }
  }

  /** Whether it was stopped: what came to nothing may then have been cut short. */
  boolean isStopped() {
    return stopped;
  }

  /** The best load of a run of so many steps; empty when there was none or it was not begun. */
  Optional<InspectedLoad> run(Planning planning, long steps) {
    // In this order: a stop that comes between the two lines finds the run to end.
    running = planning;
    return stopped
        ? Optional.empty()
        : planning.run(SearchLength.ofSteps(steps), PlanListener.none());
  }
}
