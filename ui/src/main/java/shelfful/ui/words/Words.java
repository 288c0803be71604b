package shelfful.ui.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words on the screen, by key. */
public final class Words {
  private final ResourceBundle bundle;
  private final Locale locale;

  private Words(Locale locale) {
    this.locale = locale;
    this.bundle =
        ResourceBundle.getBundle(
            "shelfful.ui.words.words",
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** The only language so far, whatever the machine's. */
  public static Words english() {
    return new Words(Locale.ENGLISH);
  }

  /**
   * The words of a key with things put into their places.
   *
   * @throws java.util.MissingResourceException for a key that has no words
   */
  public String of(String key, Object... things) {
    return new MessageFormat(bundle.getString(key), locale).format(things);
  }
}
