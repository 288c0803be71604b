package shelfful.measure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Cones as people type them: {@code 06}, {@code 6}, {@code cone 6}, {@code 5.5}. A leading zero is
 * never added or dropped, because 06 and 6 are different cones.
 */
public final class ConeText {
  private static final Pattern MAYBE_NAMED =
      Pattern.compile("(?:cone *|[\u0394\u25b3^])?([0-9][0-9.,]*)");

  private ConeText() {}

  /** Reads a cone of the published table. */
  public static TextReading<Cone> read(String text) {
    Matcher parts =
        MAYBE_NAMED.matcher(text.strip().toLowerCase(Locale.ROOT).replace('\u03b4', '\u0394'));
    if (parts.matches()) {
      var cone = Cone.find(parts.group(1).replace(',', '.'));
      if (cone.isPresent()) {
        return new TextReading.Understood<>(cone.get());
      }
    }
    return new TextReading.Refused<>(
        "There is no cone \"" + NumberText.shortened(text) + "\".",
        "Write a cone from 022 to 14, such as 06 or 6; they are different cones.");
  }
}
