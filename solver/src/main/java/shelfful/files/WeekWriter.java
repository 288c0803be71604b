package shelfful.files;

import shelfful.review.InspectedWeek;
import shelfful.week.WeekRequest;

/** Writes files of weeks. Of plans only those that break no rule can be written. */
public final class WeekWriter {
  private WeekWriter() {}

  /** The bytes of what is asked; firings that are held and the plan before are not part of it. */
  public static byte[] bytes(WeekRequest request) {
    FieldWriter document = DocumentHead.WEEK.writer();
    WeekFormat.writeShort(request, document);
    WeekFormat.writeLong(request, document);
    return JsonLayout.bytes(document.object());
  }

  /** The bytes of a plan; the same week gives the same bytes on every computer. */
  public static byte[] bytes(InspectedWeek week) {
    FieldWriter document = DocumentHead.WEEK_PLAN.writer();
    WeekPlanFormat.write(week.plan(), document);
    return JsonLayout.bytes(document.object());
  }
}
