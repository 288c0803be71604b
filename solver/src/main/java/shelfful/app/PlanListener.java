package shelfful.app;

import shelfful.inspect.InspectedLoad;

/** Who is told while planning goes on, on the planning thread. */
public interface PlanListener {

  /** A load better than any before, inspected. */
  void better(InspectedLoad load);

  /** The judge refused a load: a fault of the program. The last good load stays. */
  default void refused(FaultReport report) {}

  /** Listens to nothing. */
  static PlanListener none() {
    return load -> {};
  }
}
