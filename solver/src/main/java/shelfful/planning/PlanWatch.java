package shelfful.planning;

import shelfful.load.Load;

/** Who is told of every better load while planning goes on, on the planning thread. */
@FunctionalInterface
public interface PlanWatch {

  /**
   * A load better than any before. It is not inspected yet.
   *
   * @param load complete: every piece placed or left out with a reason
   */
  void better(Load load);
}
