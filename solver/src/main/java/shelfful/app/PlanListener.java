package shelfful.app;

import shelfful.inspect.InspectedLoad;

/** Who is told while planning goes on, on a thread that plans. */
public interface PlanListener {

  /** A load better than any before, inspected. */
  void better(InspectedLoad load);

  /** The judge refused a load: a fault of the program. The last good load stays. */
  default void refused(FaultReport report) {}

  /**
   * Between two steps of the search, every few milliseconds and by each thread that plans: as long
   * as it takes, that thread does not plan. It may come on several threads at once.
   */
  default void betweenSteps() {}

  /** Listens to nothing. */
  static PlanListener none() {
    return load -> {};
  }
}
