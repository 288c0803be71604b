package shelfful.files;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import shelfful.measure.TextReading;

/**
 * Ids and names in files: harmless on screen, on paper and in a spreadsheet. Both are read without
 * the spaces round them and with composed letters (Unicode normal form C).
 */
final class FileName {
  private static final int LONGEST_ID = 40;
  static final int LONGEST_NAME = 80;
  private static final int LONGEST_NOTE = 2000;

  private static final Pattern ID =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N} ._-]*[\\p{L}\\p{M}\\p{N}._-])?");

  /**
   * Control characters, direction marks and overrides, half characters, private use, line
   * separators.
   */
  private static final Pattern HARMFUL =
      Pattern.compile(
          "[\\p{Cntrl}\\p{Cs}\\p{Co}\u2028\u2029\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff]");

  private FileName() {}

  /**
   * An id: begins with a letter or digit, then letters, digits, spaces, dots, hyphens, underscores.
   */
  static TextReading<String> id(String raw) {
    String text = plain(raw, LONGEST_ID);
    if (text.isEmpty()) {
      return new TextReading.Refused<>("It is empty.", "Give it a short id, such as mug-large.");
    }
    if (text.length() > LONGEST_ID) {
      return tooLong(raw, LONGEST_ID);
    }
    return ID.matcher(text).matches()
        ? new TextReading.Understood<>(text)
        : new TextReading.Refused<>(
            Shown.quoted(raw) + " holds a character that an id may not have.",
            "Begin with a letter or digit; then letters, digits, spaces and . _ - only.");
  }

  /** What a potter calls it. */
  static TextReading<String> name(String raw) {
    return harmless(raw, LONGEST_NAME);
  }

  /** A whole sentence. */
  static TextReading<String> note(String raw) {
    return raw.isEmpty() ? new TextReading.Understood<>("") : harmless(raw, LONGEST_NOTE);
  }

  private static TextReading<String> harmless(String raw, int longest) {
    String text = plain(raw, longest);
    if (text.isEmpty()) {
      return new TextReading.Refused<>("It is empty.", "Write a name.");
    }
    if (text.codePointCount(0, text.length()) > longest) {
      return tooLong(raw, longest);
    }
    return HARMFUL.matcher(text).find()
        ? new TextReading.Refused<>(
            Shown.quoted(raw)
                + " holds a line break, a control character or a mark that turns text round.",
            "Type it anew.")
        : new TextReading.Understood<>(text);
  }

  private static <T> TextReading<T> tooLong(String raw, int longest) {
    return new TextReading.Refused<>(
        Shown.quoted(raw) + " has " + raw.length() + " characters.",
        "Use at most " + longest + ".");
  }

  private static String plain(String raw, int longest) {
    // Normalising could lengthen a text, but never from 20 times the limit to within it.
    return raw.length() > 20 * longest
        ? raw
        : Normalizer.normalize(raw.strip(), Normalizer.Form.NFC);
  }

  /**
   * Ids with the same key are the same to a person: case, width and spaces do not tell things
   * apart.
   */
  static String key(String id) {
    return Normalizer.normalize(id, Normalizer.Form.NFKC)
        .strip()
        .replaceAll("\\s+", " ")
        .toLowerCase(Locale.ROOT);
  }
}
