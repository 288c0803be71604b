package shelfful.schedule;

import shelfful.week.WeekPlan;

/** Who is told of every better week while planning goes on, on the planning thread. */
@FunctionalInterface
public interface WeekWatch {

  /** A week better than any before; every load in it is inspected, the week itself is not yet. */
  void better(WeekPlan plan);
}
