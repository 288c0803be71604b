package shelfful.ui.studio;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;
import shelfful.measure.MassText;
import shelfful.measure.TextReading;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.words.Words;

/**
 * How one person writes and reads values. What is shown may be rounded (a sixteenth of an inch);
 * what is stored changes only when something else is typed.
 *
 * @param words of the person's language
 * @param unit a bare number is in
 * @param numbers the decimal sign shown
 */
public record Manner(Words words, LengthUnit unit, NumberStyle numbers) {
  private static final String ABOUT = "\u2248 ";
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,6}");
  private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,4}(?:[.,][0-9]{1,3})?");
  private static final Pattern LIKE_THOUSANDS = Pattern.compile("-?[1-9][0-9]{0,2},[0-9]{3}.*");
  private static final int MOST_LETTERS = 80;

  /**
   * A length with its unit: all of it in mm and cm; in inches to the nearest sixteenth, with a sign
   * in front where that is not all of it.
   */
  String length(Length length) {
    if (unit == LengthUnit.INCHES) {
      String written = LengthText.write(length, unit);
      boolean exact =
          LengthText.readWithUnit(written)
              .value()
              .filter(back -> Math.abs(back.minus(length).micrometres()) <= 1)
              .isPresent();
      return exact ? written : ABOUT + written;
    }
    boolean centimetres = unit == LengthUnit.CENTIMETRES;
    BigDecimal value = BigDecimal.valueOf(length.micrometres(), centimetres ? 4 : 3);
    String digits = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    return styled(digits) + (centimetres ? " cm" : " mm");
  }

  /** With a comma 1.234 would look like a thousand; it keeps its dot. */
  private String styled(String digits) {
    String styled = numbers.of(digits);
    return LIKE_THOUSANDS.matcher(styled).matches() ? digits : styled;
  }

  TextReading<Length> length(String text, Bounds bounds) {
    String typed = text.strip().startsWith(ABOUT.strip()) ? text.strip().substring(1) : text;
    return LengthText.read(typed, unit)
        .then(
            length ->
                bounds.hold(length)
                    ? new TextReading.Understood<>(length)
                    : outside(text, length(bounds.least()), length(bounds.most())));
  }

  <T> TextReading<T> outside(String text, String least, String most) {
    return new TextReading.Refused<>(
        words.of("field.outside", text.strip()), words.of("field.between", least, most));
  }

  /** Grams up to a kilogram, kilograms from there on; never rounded. */
  String mass(Mass mass) {
    if (mass.grams() < 1000) {
      return mass.grams() + " g";
    }
    String kilograms = BigDecimal.valueOf(mass.grams(), 3).stripTrailingZeros().toPlainString();
    return styled(kilograms) + " kg";
  }

  TextReading<Mass> mass(String text) {
    return MassText.read(text);
  }

  TextReading<Integer> count(String text, int least, int most) {
    String plain = text.strip();
    if (!WHOLE.matcher(plain).matches()) {
      return new TextReading.Refused<>(
          words.of("field.notWhole", plain), words.of("field.writeWhole"));
    }
    int value = Integer.parseInt(plain);
    return value < least || value > most
        ? outside(text, Integer.toString(least), Integer.toString(most))
        : new TextReading.Understood<>(value);
  }

  /** A plain number without trailing zeros. */
  String number(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    return styled(exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString());
  }

  TextReading<Double> number(String text, double least, double most) {
    String plain = text.strip();
    if (!DECIMAL.matcher(plain).matches()) {
      return new TextReading.Refused<>(
          words.of("field.notNumber", plain), words.of("field.writeNumber", number(12.5)));
    }
    double value = Double.parseDouble(plain.replace(',', '.'));
    return value < least || value > most
        ? outside(text, number(least), number(most))
        : new TextReading.Understood<>(value);
  }

  TextReading<String> name(String text) {
    String plain = text.strip();
    if (plain.isEmpty()) {
      return new TextReading.Refused<>(words.of("field.empty"), words.of("field.writeName"));
    }
    return plain.length() > MOST_LETTERS
        ? new TextReading.Refused<>(
            words.of("field.long", plain.length()), words.of("field.atMost", MOST_LETTERS))
        : new TextReading.Understood<>(plain);
  }

  /** A value that may be left out: no text, no value. */
  <T> TextReading<Optional<T>> optional(String text, Function<String, TextReading<T>> read) {
    return text.isBlank()
        ? new TextReading.Understood<>(Optional.empty())
        : read.apply(text).then(value -> new TextReading.Understood<>(Optional.of(value)));
  }
}
