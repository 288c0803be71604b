package shelfful.ui.words;

import java.util.List;
import java.util.Locale;

/** A language of the screen. Numbers, units and paper are chosen apart from it. */
public enum Language {
  ENGLISH(Locale.ENGLISH),
  GERMAN(Locale.GERMAN),
  /** English made longer and strange, to find words that are cut short or not in the files. */
  PSEUDO(Locale.ENGLISH);

  private final Locale locale;

  Language(Locale locale) {
    this.locale = locale;
  }

  Locale locale() {
    return locale;
  }

  /** What people are offered. */
  public static List<Language> offered() {
    return List.of(ENGLISH, GERMAN);
  }

  /** The nearest language to a machine's; English where there is none. */
  public static Language nearest(Locale machine) {
    return machine.getLanguage().equals(Locale.GERMAN.getLanguage()) ? GERMAN : ENGLISH;
  }
}
