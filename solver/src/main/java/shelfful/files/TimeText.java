package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shelfful.measure.TextReading;
import shelfful.week.OpenHours;

/** Times of day, moments and lengths of time as our files write them, to the minute. */
final class TimeText {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);
  private static final Pattern HOURS = Pattern.compile("([0-9]{1,3}):([0-5][0-9])");
  private static final Pattern OPEN =
      Pattern.compile("([0-2][0-9]:[0-5][0-9]) ?- ?([0-2][0-9]:[0-5][0-9])");
  private static final int MINUTES = 60;

  private TimeText() {}

  /** A local time of the studio, such as {@code 2026-06-01T08:00}. */
  static TextReading<LocalDateTime> moment(JsonNode node) {
    String text = node.isTextual() ? node.textValue().strip() : "";
    try {
      if (text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}[T ][0-9]{2}:[0-9]{2}")) {
        return new TextReading.Understood<>(LocalDateTime.parse(text.replace(' ', 'T')));
      }
    } catch (DateTimeParseException notInTheCalendar) {
      return FileNumber.refused(node, "is not in the calendar.", "Check day and time.");
    }
    return FileNumber.refused(
        node, "is not a day with a time.", "Write it as \"2026-06-01T08:00\".");
  }

  static String moment(LocalDateTime time) {
    return time.format(MOMENT);
  }

  /** Hours and minutes as {@code "9:30"}, or a number of hours. */
  static TextReading<Duration> duration(JsonNode node) {
    if (node.isNumber()) {
      return FileNumber.decimal(node).then(hours -> hours(node, hours));
    }
    Matcher found = HOURS.matcher(node.isTextual() ? node.textValue().strip() : "");
    return found.matches()
        ? new TextReading.Understood<>(
            Duration.ofMinutes(
                MINUTES * Long.parseLong(found.group(1)) + Long.parseLong(found.group(2))))
        : FileNumber.refused(
            node, "is not a length of time.", "Write hours and minutes as \"9:30\".");
  }

  private static TextReading<Duration> hours(JsonNode node, BigDecimal hours) {
    BigDecimal minutes = hours.multiply(BigDecimal.valueOf(MINUTES)).stripTrailingZeros();
    boolean whole = minutes.signum() >= 0 && minutes.scale() <= 0 && minutes.precision() <= 7;
    return whole
        ? new TextReading.Understood<>(Duration.ofMinutes(minutes.longValueExact()))
        : FileNumber.refused(
            node,
            "is not a number of hours to the minute.",
            "Write hours and minutes as \"9:30\".");
  }

  static String duration(Duration time) {
    return String.format(Locale.ROOT, "%d:%02d", time.toHours(), time.toMinutesPart());
  }

  /** Working hours of a day, such as {@code "08:00-17:00"}. */
  static TextReading<OpenHours> open(JsonNode node) {
    Matcher found = OPEN.matcher(node.isTextual() ? node.textValue().strip() : "");
    try {
      if (found.matches()) {
        return new TextReading.Understood<>(
            new OpenHours(LocalTime.parse(found.group(1)), LocalTime.parse(found.group(2))));
      }
    } catch (DateTimeParseException | IllegalArgumentException wrong) {
      return FileNumber.refused(
          node, "are no hours of a day.", "Write the earlier time first, as \"08:00-17:00\".");
    }
    return FileNumber.refused(
        node, "is not a time and a later one.", "Write them as \"08:00-17:00\".");
  }

  static String open(OpenHours hours) {
    return hours.from() + "-" + hours.to();
  }
}
