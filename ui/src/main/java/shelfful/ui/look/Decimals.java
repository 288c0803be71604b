package shelfful.ui.look;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Figures as one person reads them: a fixed number of places, and her decimal sign.
 *
 * @param style the decimal sign
 */
public record Decimals(NumberStyle style) {
  /** A number with so many places. */
  public String of(double value, int places) {
    return style.of(String.format(Locale.ROOT, "%." + places + "f", value));
  }

  /** The same with its sign, also in front of what is more than nothing. */
  public String signed(double value, int places) {
    return style.of(String.format(Locale.ROOT, "%+." + places + "f", value));
  }

  /** A share from 0 to 1 in percent, without the sign of percent. */
  public String percent(double share, int places) {
    return of(100 * share, places);
  }

  /** The number, or empty text where there is none. */
  public String of(OptionalDouble value, int places) {
    return value.isPresent() ? of(value.getAsDouble(), places) : "";
  }

  /** The number a person typed, with either decimal sign; empty when it is none. */
  public static OptionalDouble read(String typed) {
    String plain = typed.strip().replace(',', '.');
    return plain.matches("[0-9]{1,9}(?:\\.[0-9]{1,4})?")
        ? OptionalDouble.of(Double.parseDouble(plain))
        : OptionalDouble.empty();
  }
}
