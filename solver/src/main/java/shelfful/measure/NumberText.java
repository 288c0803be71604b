package shelfful.measure;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plain decimal number as people write it: ASCII digits, one decimal sign (dot or comma), a sign
 * in front. No grouping, no exponent, no digits of other scripts.
 */
final class NumberText {
  static final int LONGEST = 32;

  private static final Pattern DECIMAL =
      Pattern.compile("([+-]?)([0-9]{1,9})(?:([.,])([0-9]{1,9}))?");

  private static final Pattern LIKE_GROUPING = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");

  private NumberText() {}

  /** Reads a number; {@code 1,234} is refused because half the world means 1234 by it. */
  static TextReading<BigDecimal> read(String text) {
    if (LIKE_GROUPING.matcher(text).matches()) {
      String dotted = text.replace(',', '.');
      return new TextReading.Refused<>(
          "\"" + text + "\" may mean " + dotted + " or " + text.replace(",", "") + ".",
          "Write " + dotted + " or " + text.replace(",", "") + ".");
    }
    Matcher parts = DECIMAL.matcher(text);
    if (!parts.matches()) {
      return new TextReading.Refused<>(
          "\"" + shortened(text) + "\" is not a number.",
          "Write digits with at most one decimal sign, such as 12.5.");
    }
    String decimals = parts.group(4) == null ? "" : "." + parts.group(4);
    BigDecimal size = new BigDecimal(parts.group(2) + decimals);
    return new TextReading.Understood<>(parts.group(1).equals("-") ? size.negate() : size);
  }

  /** A text short and harmless enough to stand in a sentence. */
  static String shortened(String text) {
    String plain = text.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}]", "\u25a1");
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "\u2026";
  }
}
