package shelfful.files;

import java.nio.file.Path;
import java.util.Optional;
import shelfful.record.FiringRecord;

/** Reads the file of one firing. */
public final class FiringRecordReader {
  private FiringRecordReader() {}

  /** Reads a file; never throws for what is in it, nor when it is not there. */
  public static ReadResult<FiringRecord> read(Path path) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    return problems.result(FileBytes.of(path, problems).flatMap(bytes -> record(bytes, problems)));
  }

  /**
   * Reads bytes that are already at hand.
   *
   * @param name to call them by in problems
   */
  public static ReadResult<FiringRecord> read(String name, byte[] bytes) {
    Problems problems = new Problems(name);
    return problems.result(record(bytes, problems));
  }

  private static Optional<FiringRecord> record(byte[] bytes, Problems problems) {
    return FieldReader.ofDocument(bytes, problems)
        .filter(DocumentHead.FIRING::isHeadOf)
        .flatMap(FiringRecordFormat::read);
  }
}
