package shelfful.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths as people read and type them. Written: tenths of a millimetre, or inches to the nearest
 * sixteenth. Read: {@code 89 mm}, {@code 8.9cm}, {@code 8,9 cm}, {@code 3.5in}, {@code 3 1/2"},
 * {@code 3-1/2 in}, {@code 1/2″}.
 */
public final class LengthText {
  private static final int SIXTEENTHS = 16;
  private static final int LONGEST = 24;
  private static final int FINEST_FRACTION = 64;
  private static final BigDecimal MICROMETRES_PER_INCH = BigDecimal.valueOf(25_400);

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([^a-z\"\u2033\u201d]*?) *(mm|cm|in|inch|inches|\"|\u2033|\u201d)?");
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(?:([0-9]{1,5})[ -])?([0-9]{1,2})/([0-9]{1,2})");

  private static final String MEND = "Write it like 89 mm, 8.9 cm or 3 1/2 in.";

  private LengthText() {}

  /**
   * The length in the unit, with its sign: {@code 12.7 mm}, {@code 8.9 cm}, {@code 3 1/2 in}.
   * Millimetres to one decimal, centimetres to two, inches to the nearest sixteenth; no trailing
   * zeros.
   */
  public static String write(Length length, LengthUnit unit) {
    if (unit == LengthUnit.INCHES) {
      return inches(length) + " in";
    }
    boolean centimetres = unit == LengthUnit.CENTIMETRES;
    BigDecimal value = BigDecimal.valueOf(length.micrometres(), centimetres ? 4 : 3);
    BigDecimal rounded = value.setScale(centimetres ? 2 : 1, RoundingMode.HALF_UP);
    String digits = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    return digits + (centimetres ? " cm" : " mm");
  }

  /**
   * Reads a length to the nearest micrometre; may be negative, as a coordinate may.
   *
   * @param text what was typed, at most 24 characters
   * @param whenBare the unit of a text that names none
   */
  public static TextReading<Length> read(String text, LengthUnit whenBare) {
    return read(text, Optional.of(whenBare));
  }

  /** Reads a length that must name its unit, so that no unit is ever guessed. */
  public static TextReading<Length> readWithUnit(String text) {
    return read(text, Optional.empty());
  }

  private static TextReading<Length> read(String text, Optional<LengthUnit> whenBare) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher parts = NUMBER_AND_UNIT.matcher(plain);
    if (plain.isEmpty() || plain.length() > LONGEST || !parts.matches()) {
      return refused(text, "is not a length.", MEND);
    }
    Optional<LengthUnit> unit =
        Optional.ofNullable(parts.group(2)).map(LengthText::unit).or(() -> whenBare);
    if (unit.isEmpty()) {
      return refused(text, "names no unit.", MEND);
    }
    String number = parts.group(1);
    if (number.indexOf('/') >= 0) {
      return unit.get() == LengthUnit.INCHES
          ? fraction(text, number)
          : refused(text, "is a fraction, and fractions are for inches.", MEND);
    }
    return NumberText.read(number)
        .then(value -> understood(value.multiply(micrometresPer(unit.get()))));
  }

  private static LengthUnit unit(String word) {
    return switch (word) {
      case "mm" -> LengthUnit.MILLIMETRES;
      case "cm" -> LengthUnit.CENTIMETRES;
      default -> LengthUnit.INCHES;
    };
  }

  private static BigDecimal micrometresPer(LengthUnit unit) {
    return switch (unit) {
      case MILLIMETRES -> BigDecimal.valueOf(1_000);
      case CENTIMETRES -> BigDecimal.valueOf(10_000);
      case INCHES -> MICROMETRES_PER_INCH;
    };
  }

  private static TextReading<Length> fraction(String text, String number) {
    Matcher parts = FRACTION.matcher(number);
    if (!parts.matches()) {
      return refused(text, "is not a length.", MEND);
    }
    int numerator = Integer.parseInt(parts.group(3));
    int denominator = Integer.parseInt(parts.group(4));
    boolean powerOfTwo = Integer.bitCount(denominator) == 1 && denominator > 1;
    if (!powerOfTwo
        || denominator > FINEST_FRACTION
        || numerator >= denominator
        || numerator == 0) {
      return refused(
          text,
          "has a fraction that no ruler shows.",
          "Use halves, quarters, eighths, sixteenths, 32nds or 64ths, such as 3 1/2 in.");
    }
    int whole = parts.group(2) == null ? 0 : Integer.parseInt(parts.group(2));
    // A power of two divides 25 400 µm exactly in decimals.
    BigDecimal part = BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator));
    BigDecimal size = BigDecimal.valueOf(whole).add(part).multiply(MICROMETRES_PER_INCH);
    return understood(parts.group(1).equals("-") ? size.negate() : size);
  }

  private static TextReading<Length> understood(BigDecimal micrometres) {
    long nearest = micrometres.setScale(0, RoundingMode.HALF_UP).longValueExact();
    return new TextReading.Understood<>(new Length(nearest));
  }

  private static TextReading<Length> refused(String text, String wrong, String mend) {
    return new TextReading.Refused<>("\"" + NumberText.shortened(text) + "\" " + wrong, mend);
  }

  private static String inches(Length length) {
    long sixteenths = Math.round(length.inches() * SIXTEENTHS);
    String sign = sixteenths < 0 ? "-" : "";
    long whole = Math.abs(sixteenths) / SIXTEENTHS;
    long part = Math.abs(sixteenths) % SIXTEENTHS;
    if (part == 0) {
      return sign + whole;
    }
    long divisor = Long.lowestOneBit(part);
    String fraction = part / divisor + "/" + SIXTEENTHS / divisor;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }
}
