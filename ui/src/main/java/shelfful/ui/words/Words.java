package shelfful.ui.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;

/** The words on the screen, by key. */
public final class Words {
  private final ResourceBundle bundle;
  private final Language language;

  private Words(Language language) {
    this.language = language;
    this.bundle =
        ResourceBundle.getBundle(
            "shelfful.ui.words.words",
            language.locale(),
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** English, whatever the machine's language. */
  public static Words english() {
    return in(Language.ENGLISH);
  }

  /** The words of a language. */
  public static Words in(Language language) {
    return new Words(language);
  }

  /** The language these are of. */
  public Language language() {
    return language;
  }

  /**
   * The words of a key with things put into their places.
   *
   * @throws java.util.MissingResourceException for a key that has no words
   */
  public String of(String key, Object... things) {
    String pattern = bundle.getString(key);
    String spoken = language == Language.PSEUDO ? PseudoWords.of(pattern) : pattern;
    return new MessageFormat(spoken, language.locale()).format(things);
  }

  /** What a constant is called: the words of the prefix and its name in small letters. */
  public String of(String prefix, Enum<?> constant) {
    return of(prefix + "." + constant.name().toLowerCase(Locale.ROOT));
  }

  /** Every key there are words for. */
  public Set<String> keys() {
    return bundle.keySet();
  }
}
