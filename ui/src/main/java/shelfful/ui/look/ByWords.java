package shelfful.ui.look;

import java.util.function.Function;
import javafx.util.StringConverter;

/**
 * Shows the choices of a box by their words. Nobody types into such a box.
 *
 * @param <T> what is chosen
 */
public final class ByWords<T> extends StringConverter<T> {
  private final Function<T, String> words;

  /**
   * With words for every choice; no choice has none.
   *
   * @param words of a choice
   */
  public ByWords(Function<T, String> words) {
    this.words = words;
  }

  @Override
  public String toString(T choice) {
    return choice == null ? "" : words.apply(choice);
  }

  @Override
  public T fromString(String text) {
    throw new UnsupportedOperationException("this box is not typed into");
  }
}
