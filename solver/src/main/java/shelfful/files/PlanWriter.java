package shelfful.files;

import java.nio.file.Path;
import shelfful.inspect.InspectedLoad;

/** Writes a plan file. Only a load that breaks no rule can be written. */
public final class PlanWriter {
  private PlanWriter() {}

  /**
   * Saves the plan, keeping the version before as {@code name.bak}.
   *
   * @throws SaveFailed with the old file untouched
   */
  public static void write(InspectedLoad load, Path file) throws SaveFailed {
    AtomicSave.save(file, bytes(load));
  }

  /** The bytes of the file; the same load gives the same bytes on every computer. */
  public static byte[] bytes(InspectedLoad load) {
    FieldWriter document = DocumentHead.PLAN.writer();
    PlanFormat.write(load.load(), document);
    return JsonLayout.bytes(document.object());
  }
}
