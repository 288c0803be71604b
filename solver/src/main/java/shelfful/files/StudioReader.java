package shelfful.files;

import java.nio.file.Path;
import java.util.Optional;
import shelfful.studio.Studio;

/** Reads a studio file. A studio is used whole or not at all. */
public final class StudioReader {
  private StudioReader() {}

  /** Reads a file; never throws for what is in it, nor when it is not there. */
  public static ReadResult<Studio> read(Path path) {
    Problems problems = new Problems(FileBytes.nameOf(path));
    return problems.result(FileBytes.of(path, problems).flatMap(bytes -> studio(bytes, problems)));
  }

  /**
   * Reads bytes that are already at hand.
   *
   * @param name to call them by in problems
   */
  public static ReadResult<Studio> read(String name, byte[] bytes) {
    Problems problems = new Problems(name);
    return problems.result(studio(bytes, problems));
  }

  private static Optional<Studio> studio(byte[] bytes, Problems problems) {
    return FieldReader.ofDocument(bytes, problems)
        .filter(DocumentHead.STUDIO::isHeadOf)
        .flatMap(StudioFormat::read);
  }
}
