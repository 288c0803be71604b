package shelfful.files;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a file.
 *
 * @param <T> what the file holds
 */
public sealed interface ReadResult<T> {

  /** Every problem found, in the order of the file; at most 100 and one that counts the rest. */
  List<Problem> problems();

  /** The problems as sentences, in the same order. */
  default List<String> sentences() {
    return problems().stream().map(Problem::sentence).toList();
  }

  /** What can be used, if anything. */
  Optional<T> found();

  /**
   * The file can be used.
   *
   * @param value what it holds, complete and checked
   * @param problems rows that were skipped, and things that are odd but harmless; may be empty
   */
  record Read<T>(T value, List<Problem> problems) implements ReadResult<T> {
    /** Takes its own copy. */
    public Read {
      problems = List.copyOf(problems);
    }

    @Override
    public Optional<T> found() {
      return Optional.of(value);
    }
  }

  /**
   * Nothing in the file can be used.
   *
   * @param problems why; never empty
   */
  record Refused<T>(List<Problem> problems) implements ReadResult<T> {
    /** Takes its own copy. */
    public Refused {
      problems = List.copyOf(problems);
    }

    @Override
    public Optional<T> found() {
      return Optional.empty();
    }
  }
}
