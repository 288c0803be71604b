package shelfful.app;

import shelfful.week.WeekRequest;

/** What came of changing what is asked of a week. */
public sealed interface WeekChange {

  /** It can be planned like this. */
  record Possible(WeekRequest request) implements WeekChange {}

  /**
   * It cannot.
   *
   * @param sentence why, and what would do
   */
  record Refused(String sentence) implements WeekChange {}
}
