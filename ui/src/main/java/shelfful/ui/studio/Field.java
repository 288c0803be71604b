package shelfful.ui.studio;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import shelfful.measure.TextReading;
import shelfful.studio.Studio;

/**
 * A value of a studio that people can change.
 *
 * @param label in words
 * @param path of the value in the studio's file
 * @param kind how it is typed or chosen
 * @param shown the value as a text in the person's manner
 * @param put the studio that a text makes of another, or why it makes none
 * @param choices what can be chosen; empty for a field that is typed
 */
public record Field(
    String label,
    String path,
    Kind kind,
    Function<Studio, String> shown,
    BiFunction<Studio, String, TextReading<Studio>> put,
    List<Choice> choices) {
  /** Takes its own copy. */
  public Field {
    choices = List.copyOf(choices);
  }

  /** How a field is filled in. */
  public enum Kind {
    TYPED,
    CHOSEN,
    TICKED,
    COLOUR,
    TOLD
  }

  /**
   * Something that can be chosen.
   *
   * @param value the text it is known by
   * @param words what it is called
   */
  public record Choice(String value, String words) {}

  /** Whether another field would be filled in by the same control. */
  boolean looksLike(Field other) {
    return label.equals(other.label)
        && path.equals(other.path)
        && kind == other.kind
        && choices.equals(other.choices);
  }
}
