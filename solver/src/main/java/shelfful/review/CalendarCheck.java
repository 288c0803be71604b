package shelfful.review;

import shelfful.week.FiringTimes;
import shelfful.week.Hold;
import shelfful.week.KilnCalendar;
import shelfful.week.PlannedFiring;
import shelfful.week.Span;
import shelfful.week.WeekPlan;

/**
 * Whether somebody is there to load and unpack, and the kiln works. A firing whose time is held may
 * be loaded outside the working hours, since somebody asked for just that.
 */
final class CalendarCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    for (PlannedFiring firing : plan.firings()) {
      KilnCalendar calendar = plan.request().kiln(firing.kilnId()).orElseThrow().calendar();
      FiringTimes times = firing.times();
      if (firing.hold() == Hold.FREE) {
        tended(calendar, new Span(times.loads(), times.lit()), "loaded", firing, findings);
        tended(calendar, new Span(times.unpacks(), times.unpacked()), "unpacked", firing, findings);
      }
      for (Span span : calendar.outOfOrder()) {
        if (span.overlaps(times.busy())) {
          findings.firing(
              WeekRule.KILN_OUT_OF_ORDER,
              firing.id(),
              "The firing "
                  + firing.id()
                  + " is in the kiln while it is out of order, from "
                  + span.from()
                  + " to "
                  + span.to()
                  + ".");
        }
      }
    }
  }

  private static void tended(
      KilnCalendar calendar, Span span, String what, PlannedFiring firing, WeekFindings findings) {
    if (!calendar.isTended(span)) {
      findings.firing(
          WeekRule.KILN_NOT_TENDED,
          firing.id(),
          "The firing "
              + firing.id()
              + " is "
              + what
              + " from "
              + span.from()
              + " to "
              + span.to()
              + ", when nobody works.");
    }
  }
}
