package shelfful.files;

import java.nio.file.Path;
import shelfful.review.InspectedWeek;
import shelfful.week.WeekRequest;

/** Writes files of weeks. Of plans only those that break no rule can be written. */
public final class WeekWriter {
  private WeekWriter() {}

  /**
   * Saves what is asked, keeping the version before as {@code name.bak}.
   *
   * @throws SaveFailed with the old file untouched
   */
  public static void write(WeekRequest request, Path file) throws SaveFailed {
    AtomicSave.save(file, bytes(request));
  }

  /** The bytes of what is asked; firings that are held and the plan before are not part of it. */
  public static byte[] bytes(WeekRequest request) {
    FieldWriter document = DocumentHead.WEEK.writer();
    WeekFormat.writeShort(request, document);
    WeekFormat.writeLong(request, document);
    return JsonLayout.bytes(document.object());
  }

  /**
   * Saves a plan, keeping the version before as {@code name.bak}.
   *
   * @throws SaveFailed with the old file untouched
   */
  public static void write(InspectedWeek week, Path file) throws SaveFailed {
    AtomicSave.save(file, bytes(week));
  }

  /** The bytes of a plan; the same week gives the same bytes on every computer. */
  public static byte[] bytes(InspectedWeek week) {
    FieldWriter document = DocumentHead.WEEK_PLAN.writer();
    WeekPlanFormat.write(week.plan(), document);
    return JsonLayout.bytes(document.object());
  }
}
