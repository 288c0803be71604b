package shelfful.app;

import java.util.List;

/**
 * What came of opening something.
 *
 * @param <T> what was opened
 */
public sealed interface Opened<T> {

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
