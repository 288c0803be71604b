package shelfful.files;

import java.nio.file.Path;
import shelfful.studio.Studio;

/** Writes a studio file; the same studio gives the same bytes on every computer. */
public final class StudioWriter {
  private StudioWriter() {}

  /**
   * Saves the studio, keeping the version before as {@code name.bak}.
   *
   * @throws SaveFailed with the old file untouched
   */
  public static void write(Studio studio, Path file) throws SaveFailed {
    AtomicSave.save(file, bytes(studio));
  }

  /** The bytes of the file. */
  public static byte[] bytes(Studio studio) {
    FieldWriter document = DocumentHead.STUDIO.writer();
    StudioFormat.write(studio, document);
    return JsonLayout.bytes(document.object());
  }
}
