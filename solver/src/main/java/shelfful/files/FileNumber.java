package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.BigInteger;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.TextReading;

/** Numbers as our files write them, exact, and what a number in a file means. */
final class FileNumber {
  /**
   * No number in a file has more digits before the decimal sign; a larger one is never expanded.
   */
  private static final int MOST_DIGITS = 19;

  private static final int MOST_DECIMALS = 400;

  private FileNumber() {}

  static BigDecimal of(Length length) {
    return plain(BigDecimal.valueOf(length.micrometres(), 3));
  }

  static BigDecimal of(Mass mass) {
    return plain(BigDecimal.valueOf(mass.grams(), 3));
  }

  static BigDecimal of(Angle angle) {
    return plain(BigDecimal.valueOf(angle.millidegrees(), 3));
  }

  /** The shortest decimal that reads back as the same double. */
  static BigDecimal of(double value) {
    BigDecimal shortest = new BigDecimal(Double.toString(value));
    return shortest.scale() > 40 ? shortest : plain(shortest);
  }

  static String written(Length length) {
    return of(length).toPlainString();
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  /** A number of a size that is safe to reckon with. */
  static TextReading<BigDecimal> decimal(JsonNode node) {
    if (!node.isNumber()) {
      return refused(
          node, "is not a number.", "Write a number without quotation marks, such as 12.5.");
    }
    BigDecimal value = node.decimalValue();
    // Asked of the unexpanded number: 1e999999999 must not be written out.
    long digits = (long) value.precision() - value.scale();
    if (value.signum() != 0 && digits > MOST_DIGITS || value.scale() > MOST_DECIMALS) {
      return refused(node, "is far out of range.", "Check the exponent and the digits.");
    }
    return new TextReading.Understood<>(value.signum() == 0 ? BigDecimal.ZERO : value);
  }

  /** A number with at most three decimals, in thousandths. */
  static TextReading<Long> thousandths(JsonNode node) {
    return decimal(node)
        .then(
            value -> {
              BigDecimal stripped = value.stripTrailingZeros();
              return stripped.scale() > 3
                  ? refused(node, "has more than three decimals.", "Round it to three decimals.")
                  : whole(node, stripped.movePointRight(3));
            });
  }

  /** A number without a fraction that fits a long. */
  static TextReading<Long> whole(JsonNode node) {
    return decimal(node)
        .then(
            value ->
                value.stripTrailingZeros().scale() > 0
                    ? refused(node, "is not a whole number.", "Write a number without a fraction.")
                    : whole(node, value));
  }

  private static TextReading<Long> whole(JsonNode node, BigDecimal value) {
    BigInteger integer = value.toBigInteger();
    return integer.bitLength() > 63
        ? refused(node, "is far out of range.", "Check its digits.")
        : new TextReading.Understood<>(integer.longValue());
  }

  static <T> TextReading<T> refused(JsonNode node, String wrong, String mend) {
    return new TextReading.Refused<>(shown(node) + " " + wrong, mend);
  }

  /** A value as the file has it, shortened; only the kind of a list or an object. */
  static String shown(JsonNode node) {
    if (node.isTextual()) {
      return Shown.quoted(node.textValue());
    }
    if (node.isNumber()) {
      return Shown.text(node.isIntegralNumber() ? node.asText() : node.decimalValue().toString());
    }
    return switch (node.getNodeType()) {
      case ARRAY -> "A list";
      case OBJECT -> "An object";
      case BOOLEAN -> node.asText();
      default -> "null";
    };
  }
}
