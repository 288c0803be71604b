package shelfful.week;

import java.time.LocalTime;

/**
 * When somebody is there on one day of the week.
 *
 * @param from the first minute
 * @param to the minute of going home; after {@code from}, at most 23:59
 */
public record OpenHours(LocalTime from, LocalTime to) {
  /** Refuses hours that end before they begin. */
  public OpenHours {
    if (!to.isAfter(from)) {
      throw new IllegalArgumentException(
          "Working hours must end after they begin, not from " + from + " to " + to);
    }
  }
}
