package shelfful.files;

import java.nio.file.Path;
import java.util.Optional;
import shelfful.load.Load;

/**
 * Reads a plan file. What comes back is a plain load: it must be inspected before it is shown or
 * saved again.
 */
public final class PlanReader {
  private PlanReader() {}

  /** Reads a file; never throws for what is in it, nor when it is not there. */
  public static ReadResult<Load> read(Path path) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    return problems.result(FileBytes.of(path, problems).flatMap(bytes -> load(bytes, problems)));
  }

  /**
   * Reads bytes that are already at hand.
   *
   * @param name to call them by in problems
   */
  public static ReadResult<Load> read(String name, byte[] bytes) {
    Problems problems = new Problems(name);
    return problems.result(load(bytes, problems));
  }

  private static Optional<Load> load(byte[] bytes, Problems problems) {
    return FieldReader.ofDocument(bytes, problems)
        .filter(DocumentHead.PLAN::isHeadOf)
        .flatMap(PlanFormat::read);
  }
}
