package shelfful.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shelfful.files.ReadResult;
import shelfful.files.SaveFailed;
import shelfful.files.StudioReader;
import shelfful.files.StudioWriter;
import shelfful.studio.Studio;

/** Opens, judges and saves a studio. */
public final class KeepAStudio {
  private KeepAStudio() {}

  /**
   * Something wrong with a studio.
   *
   * @param where its path in the file, such as {@code /forms/3/height}
   * @param field the field's name in the file
   * @param wrong a sentence with the value
   * @param mend a sentence: how to mend it
   */
  public record Fault(String where, String field, String wrong, String mend) {}

  /**
   * How a studio stands.
   *
   * @param sound whether its file could be read again
   * @param faults everything noted; a sound studio may have warnings
   */
  public record Judgement(boolean sound, List<Fault> faults) {
    /** Takes its own copy. */
    public Judgement {
      faults = List.copyOf(faults);
    }
  }

  /** Opens a studio file; never throws for what is in it. */
  public static Opened<Studio> open(Path file) {
    return Opened.of(StudioReader.read(file));
  }

  /** Opens a studio whose bytes are at hand. */
  public static Opened<Studio> open(String name, byte[] bytes) {
    return Opened.of(StudioReader.read(name, bytes));
  }

  /** Judges a studio by the rules of its file: as if it were saved and opened again. */
  public static Judgement judge(Studio studio) {
    ReadResult<Studio> read = StudioReader.read("", StudioWriter.bytes(studio));
    return new Judgement(
        read.found().isPresent(),
        read.problems().stream()
            .map(one -> new Fault(one.where(), one.field(), one.wrong(), one.mend()))
            .toList());
  }

  /** The bytes that a studio is saved as. */
  public static byte[] bytes(Studio studio) {
    return StudioWriter.bytes(studio);
  }

  /**
   * Saves a studio in one step, keeping the version before.
   *
   * @return why it could not be saved; empty when it was
   */
  public static Optional<String> save(Studio studio, Path file) {
    try {
      StudioWriter.write(studio, file);
      return Optional.empty();
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    }
  }
}
