package shelfful.schedule;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import shelfful.week.WeekRequest;

/** Turns times of the studio into minutes since the start of the week, and back. */
final class MinuteClock {
  private static final long DAY = 24 * 60;

  private final LocalDateTime start;
  private final long intoFirstDay;
  private final LocalDateTime end;

  MinuteClock(WeekRequest request) {
    this.start = request.start();
    this.end = request.end();
    this.intoFirstDay = start.toLocalDate().atStartOfDay().until(start, ChronoUnit.MINUTES);
  }

  /** A part of a minute counts as a whole one, so that nothing is taken as ready too early. */
  long minute(LocalDateTime time) {
    return Math.floorDiv(start.until(time, ChronoUnit.SECONDS) + 59, 60L);
  }

  LocalDateTime time(long minute) {
    return start.plusMinutes(minute);
  }

  /** The day of a minute, 0 for the first. */
  long day(long minute) {
    return Math.floorDiv(intoFirstDay + minute, DAY);
  }

  long day(LocalDate day) {
    return start.toLocalDate().until(day, ChronoUnit.DAYS);
  }

  /** The minute by which everything is unpacked. */
  long end() {
    return start.until(end, ChronoUnit.MINUTES);
  }
}
