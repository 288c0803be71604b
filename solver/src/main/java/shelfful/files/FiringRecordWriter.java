package shelfful.files;

import java.nio.file.Path;
import shelfful.record.FiringRecord;

/** Writes the file of one firing. */
public final class FiringRecordWriter {
  private FiringRecordWriter() {}

  /**
   * Saves the firing, keeping the version before as {@code name.bak}.
   *
   * @throws SaveFailed with the old file untouched; also when what was noted could not be read back
   */
  public static void write(FiringRecord record, Path file) throws SaveFailed {
    byte[] bytes = bytes(record);
    ReadResult<FiringRecord> back = FiringRecordReader.read(FileBytes.nameOf(file), bytes);
    if (back.found().isEmpty()) {
      throw SaveFailed.unreadable(back.problems().get(0));
    }
    AtomicSave.save(file, bytes);
  }

  /** The bytes of the file; the same firing gives the same bytes on every computer. */
  public static byte[] bytes(FiringRecord record) {
    FieldWriter document = DocumentHead.FIRING.writer();
    FiringRecordFormat.write(record, document);
    return JsonLayout.bytes(document.object());
  }
}
