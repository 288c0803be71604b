package shelfful.measure;

import java.util.Optional;
import java.util.function.Function;

/**
 * What became of a text that a person or a file wrote: a value, or the reason why it is none.
 *
 * @param <T> the kind of value
 */
public sealed interface TextReading<T> {

  /** The value, or empty when the text was refused. */
  Optional<T> value();

  /** Goes on with the value, if there is one. */
  <U> TextReading<U> then(Function<T, TextReading<U>> next);

  /**
   * The text says this.
   *
   * @param understood the value, as exact as it was written
   */
  record Understood<T>(T understood) implements TextReading<T> {
    @Override
    public Optional<T> value() {
      return Optional.of(understood);
    }

    @Override
    public <U> TextReading<U> then(Function<T, TextReading<U>> next) {
      return next.apply(understood);
    }
  }

  /**
   * The text says nothing certain.
   *
   * @param wrong a sentence that says why, for people
   * @param mend a sentence that says what to write instead
   */
  record Refused<T>(String wrong, String mend) implements TextReading<T> {
    @Override
    public Optional<T> value() {
      return Optional.empty();
    }

    @Override
    public <U> TextReading<U> then(Function<T, TextReading<U>> next) {
      return new Refused<>(wrong, mend);
    }
  }
}
