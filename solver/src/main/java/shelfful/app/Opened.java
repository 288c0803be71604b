package shelfful.app;

import java.util.List;
import shelfful.files.ReadResult;

/**
 * What came of opening something.
 *
 * @param <T> what was opened
 */
public sealed interface Opened<T> {

  /** What came of reading a file, with its problems as sentences. */
  static <T> Opened<T> of(ReadResult<T> read) {
    return read.found()
        .<Opened<T>>map(found -> new Ready<>(found, read.sentences()))
        .orElseGet(() -> new Refused<>(false, read.sentences()));
  }

  /**
   * It can be used.
   *
   * @param notes sentences about what was skipped or is odd; may be empty
   */
  record Ready<T>(T value, List<String> notes) implements Opened<T> {
    /** Takes its own copy. */
    public Ready {
      notes = List.copyOf(notes);
    }
  }

  /**
   * It cannot be used.
   *
   * @param breaksRules it could be read, but breaks rules of a setting; if not, it could not be
   *     read
   * @param sentences why, each with how to mend it; never empty
   */
  record Refused<T>(boolean breaksRules, List<String> sentences) implements Opened<T> {
    /** Takes its own copy. */
    public Refused {
      sentences = List.copyOf(sentences);
    }
  }
}
