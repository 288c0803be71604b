package shelfful.app;

import java.util.List;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekFinding;
import shelfful.week.WeekPlan;

/** Who is told while a week is planned, on the planning thread. */
public interface WeekListener {

  /** A week better than any before, or the last one with its loads evenly spaced; inspected. */
  void better(InspectedWeek week);

  /** The judge refused a week: a fault of the program. The last good week stays. */
  default void refused(WeekPlan plan, List<WeekFinding> findings) {}

  /**
   * Between two steps of the search of a load, every few milliseconds and by each thread that
   * plans: as long as it takes, that thread does not plan. It may come on several threads at once.
   */
  default void betweenSteps() {}

  /** Listens to nothing. */
  static WeekListener none() {
    return week -> {};
  }
}
