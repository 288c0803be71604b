package shelfful.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Masses as people type them, always with a unit: {@code 350 g}, {@code 0.35 kg}, {@code 1.5 lb}.
 */
public final class MassText {
  private static final int LONGEST = 24;
  private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([^a-z]*?) *(g|kg|lb|lbs)");

  /**
   * The avoirdupois pound is 0.45359237 kg exactly (international yard and pound agreement, 1959).
   */
  private static final BigDecimal GRAMS_PER_POUND = new BigDecimal("453.59237");

  private MassText() {}

  /** Reads a mass to the nearest gram; never negative. */
  public static TextReading<Mass> read(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher parts = NUMBER_AND_UNIT.matcher(plain);
    if (plain.length() > LONGEST || !parts.matches()) {
      return refused(text, "is not a mass with its unit.");
    }
    BigDecimal gramsPerUnit =
        switch (parts.group(2)) {
          case "g" -> BigDecimal.ONE;
          case "kg" -> BigDecimal.valueOf(1000);
          default -> GRAMS_PER_POUND;
        };
    return NumberText.read(parts.group(1)).then(value -> mass(text, value.multiply(gramsPerUnit)));
  }

  private static TextReading<Mass> mass(String text, BigDecimal grams) {
    if (grams.signum() < 0) {
      return refused(text, "is less than nothing.");
    }
    long nearest = grams.setScale(0, RoundingMode.HALF_UP).longValueExact();
    return new TextReading.Understood<>(new Mass(nearest));
  }

  private static TextReading<Mass> refused(String text, String wrong) {
    return new TextReading.Refused<>(
        "\"" + NumberText.shortened(text) + "\" " + wrong,
        "Write it like 350 g, 0.35 kg or 1.5 lb.");
  }
}
