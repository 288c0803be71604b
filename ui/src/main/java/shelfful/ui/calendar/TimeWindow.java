package shelfful.ui.calendar;

import java.time.Duration;
import java.time.LocalDateTime;
import shelfful.week.Span;

/**
 * The part of a calendar that is seen: which moment lies at which pixel. It never looks past either
 * end of the time there is, except where all of it is narrower than the window.
 *
 * @param from the first moment there is
 * @param to the last one
 * @param width of the window in pixels, at least 1
 * @param perDay pixels of a day, more than 0
 * @param left pixels that lie before the window, at least 0
 */
public record TimeWindow(
    LocalDateTime from, LocalDateTime to, double width, double perDay, double left) {
  /** The most pixels of a day. */
  public static final double WIDEST = 1600;

  private static final double MINUTES = 24 * 60;

  /** Keeps to the time there is. */
  public TimeWindow {
    width = Math.max(1, width);
    perDay = clamped(from, to, width, perDay);
    left = Math.max(0, Math.min(left, days(from, to) * perDay - width));
  }

  /** All there is. */
  public static TimeWindow whole(LocalDateTime from, LocalDateTime to, double width) {
    return new TimeWindow(from, to, width, 0, 0);
  }

  /** Never less than what shows all there is, and never more than the most. */
  private static double clamped(LocalDateTime from, LocalDateTime to, double width, double perDay) {
    return Math.min(WIDEST, Math.max(width / days(from, to), perDay));
  }

  private static double days(LocalDateTime from, LocalDateTime to) {
    return Duration.between(from, to).toMinutes() / MINUTES;
  }

  /** Where a moment lies in the window; outside of it where it is not seen. */
  public double x(LocalDateTime time) {
    return days(from, time) * perDay - left;
  }

  /** The moment at a pixel, to the minute. */
  public LocalDateTime time(double x) {
    return from.plusMinutes(Math.round((x + left) / perDay * MINUTES));
  }

  /** The pixels of all there is. */
  public double length() {
    return days(from, to) * perDay;
  }

  /** As large as the factor says, with the moment at a pixel staying there. */
  public TimeWindow zoomed(double factor, double x) {
    return scaled(perDay * factor, x);
  }

  /** Shows so many days from the moment that is seen first. */
  public TimeWindow ofDays(double days) {
    return scaled(width / days, 0);
  }

  private TimeWindow scaled(double wanted, double x) {
    double scale = clamped(from, to, width, wanted);
    return new TimeWindow(from, to, width, scale, (left + x) * scale / perDay - x);
  }

  /** Further along by pixels. */
  public TimeWindow scrolled(double by) {
    return new TimeWindow(from, to, width, perDay, left + by);
  }

  /** The same in a window of another width. */
  public TimeWindow wide(double other) {
    return new TimeWindow(from, to, other, perDay, left);
  }

  /** Scrolled as little as possible so that a span is seen, its beginning first of all. */
  public TimeWindow showing(Span span) {
    double begins = x(span.from());
    double ends = x(span.to());
    if (ends - begins > width || begins < 0) {
      return scrolled(begins);
    }
    return ends > width ? scrolled(ends - width) : this;
  }
}
