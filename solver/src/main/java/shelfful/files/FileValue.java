package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import shelfful.measure.Cone;
import shelfful.measure.ConeText;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.measure.Mass;
import shelfful.measure.MassText;
import shelfful.measure.TextReading;

/** What a single value of a JSON file means, or why it means nothing. */
final class FileValue {
  private static final long MOST_GRAMS = 1_000_000;

  private FileValue() {}

  /** Millimetres as a number, or a text with its unit. */
  static TextReading<Length> length(JsonNode node, LengthRange range) {
    TextReading<Length> length;
    if (node.isTextual()) {
      length = LengthText.readWithUnit(node.textValue());
    } else if (node.isNumber()) {
      length =
          FileNumber.thousandths(node).then(um -> new TextReading.Understood<>(new Length(um)));
    } else {
      length =
          FileNumber.refused(
              node,
              "is not a length.",
              "Write millimetres as a number, or a text like \"3 1/2 in\".");
    }
    return length.then(range::check);
  }

  /** Kilograms as a number, or a text with its unit; up to a tonne. */
  static TextReading<Mass> mass(JsonNode node) {
    TextReading<Long> grams;
    if (node.isTextual()) {
      grams =
          MassText.read(node.textValue()).then(mass -> new TextReading.Understood<>(mass.grams()));
    } else if (node.isNumber()) {
      grams = FileNumber.thousandths(node);
    } else {
      grams =
          FileNumber.refused(
              node, "is not a mass.", "Write kilograms as a number, or a text like \"350 g\".");
    }
    return grams.then(
        value ->
            value < 0 || value > MOST_GRAMS
                ? FileNumber.refused(node, "is out of range.", "A mass is from 0 to 1000 kg.")
                : new TextReading.Understood<>(new Mass(value)));
  }

  static TextReading<Cone> cone(JsonNode node) {
    if (!node.isTextual()) {
      return FileNumber.refused(
          node,
          "is not a cone.",
          "Write the cone in quotation marks, \"6\" or \"06\"; they are different cones.");
    }
    return ConeText.read(node.textValue());
  }

  static TextReading<Integer> whole(JsonNode node, int least, int most) {
    return FileNumber.whole(node)
        .then(
            value ->
                value < least || value > most
                    ? FileNumber.refused(
                        node, "is out of range.", "It must be from " + least + " to " + most + ".")
                    : new TextReading.Understood<>(value.intValue()));
  }

  static TextReading<Long> wholeAtLeast(JsonNode node, long least) {
    return FileNumber.whole(node)
        .then(
            value ->
                value < least
                    ? FileNumber.refused(
                        node, "is out of range.", "It must be at least " + least + ".")
                    : new TextReading.Understood<>(value));
  }

  static TextReading<Boolean> flag(JsonNode node) {
    return node.isBoolean()
        ? new TextReading.Understood<>(node.booleanValue())
        : FileNumber.refused(
            node, "is neither true nor false.", "Write true or false without quotation marks.");
  }

  static TextReading<LocalDate> day(JsonNode node) {
    return node.isTextual()
        ? day(node.textValue())
        : FileNumber.refused(node, "is not a day.", "Write it as \"2026-05-31\".");
  }

  /** Year, month and day in that order, the only order that nobody reads otherwise. */
  static TextReading<LocalDate> day(String text) {
    try {
      if (text.strip().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
        return new TextReading.Understood<>(LocalDate.parse(text.strip()));
      }
    } catch (DateTimeParseException e) {
      return new TextReading.Refused<>(
          Shown.quoted(text) + " is not in the calendar.", "Check month and day.");
    }
    return new TextReading.Refused<>(
        Shown.quoted(text) + " is not a day as year-month-day.", "Write it as 2026-05-31.");
  }

  /** One of the words of a closed list, small letters and hyphens, such as {@code bone-dry}. */
  static <E extends Enum<E>> TextReading<E> choice(String text, Class<E> kind) {
    String word = text.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    for (E value : kind.getEnumConstants()) {
      if (word(value).equals(word)) {
        return new TextReading.Understood<>(value);
      }
    }
    return new TextReading.Refused<>(
        Shown.quoted(text) + " is not one of the words for it.",
        NearMiss.advice(text, words(kind)));
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static <E extends Enum<E>> List<String> words(Class<E> kind) {
    return Arrays.stream(kind.getEnumConstants()).map(FileValue::word).toList();
  }
}
