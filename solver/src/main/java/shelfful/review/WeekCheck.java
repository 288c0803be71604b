package shelfful.review;

import shelfful.week.WeekPlan;

/** Looks at one side of a week. */
interface WeekCheck {
  /**
   * Notes what is wrong.
   *
   * @param ways of the pieces of this plan
   */
  void judge(WeekPlan plan, Ways ways, WeekFindings findings);
}
