package shelfful.files;

import java.nio.file.Path;
import java.util.Optional;
import shelfful.edit.WorkPlan;

/**
 * Writes the desk's work file: a plan as far as it has come, with its pins and locks. Unlike a plan
 * file it may hold work that breaks rules.
 */
public final class WorkWriter {
  private WorkWriter() {}

  /**
   * Saves the work, keeping the version before as {@code name.bak}.
   *
   * @throws SaveFailed with the old file untouched
   */
  public static void write(WorkPlan work, Path file) throws SaveFailed {
    AtomicSave.save(file, bytes(work));
  }

  /** The bytes of the file; the same work gives the same bytes on every computer. */
  public static byte[] bytes(WorkPlan work) {
    return bytes(work, Optional.empty());
  }

  /**
   * The same with the file that the work belongs to, for recovery.
   *
   * @param of the whole path of that file
   */
  public static byte[] bytes(WorkPlan work, Optional<String> of) {
    FieldWriter document = DocumentHead.WORK.writer();
    document.text("of", of).texts("pinned", work.pinned()).texts("locked", work.locked());
    PlanFormat.write(work.load(), document);
    return JsonLayout.bytes(document.object());
  }
}
