package shelfful.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as people read them: tenths of a millimetre, or inches to the nearest sixteenth. */
public final class LengthText {
  private static final int SIXTEENTHS = 16;

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
