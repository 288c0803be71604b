package shelfful.review;

import shelfful.week.WeekPlan;

/** Looks at one side of a week. */
interface WeekCheck {
  void judge(WeekPlan plan, WeekFindings findings);
}
