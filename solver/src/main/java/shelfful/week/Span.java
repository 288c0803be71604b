package shelfful.week;

import java.time.LocalDateTime;

/**
 * A stretch of time.
 *
 * @param from its first moment
 * @param to the moment it is over; after {@code from}
 */
public record Span(LocalDateTime from, LocalDateTime to) {
  /** Refuses a span that ends before or when it begins. */
  public Span {
    if (!to.isAfter(from)) {
      throw new IllegalArgumentException(
          "A span must end after it begins, not from " + from + " to " + to);
    }
  }

  /** Whether the two have more than a moment in common. */
  public boolean overlaps(Span other) {
    return from.isBefore(other.to) && other.from.isBefore(to);
  }
}
