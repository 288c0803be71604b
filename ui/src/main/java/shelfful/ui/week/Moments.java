package shelfful.ui.week;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import shelfful.ui.words.Words;

/** Days and times as people read them. */
record Moments(Words words) {

  /** Weekday, day and month. */
  String day(LocalDate day) {
    return words.of(
        "week.date",
        words.of("weekDay", day.getDayOfWeek()),
        Integer.toString(day.getDayOfMonth()),
        words.of("weekMonth", day.getMonth()));
  }

  /** The same said shorter and shorter. */
  List<String> days(LocalDate day) {
    String number = Integer.toString(day.getDayOfMonth());
    return List.of(
        day(day),
        words.of("week.dateShort", words.of("weekDay", day.getDayOfWeek()), number),
        number);
  }

  /** Hours and minutes. */
  String time(LocalTime time) {
    return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }

  /** Day and time. */
  String moment(LocalDateTime moment) {
    return words.of("week.moment", day(moment.toLocalDate()), time(moment.toLocalTime()));
  }
}
