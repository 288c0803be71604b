package shelfful.week;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * When a kiln may be loaded and unpacked. It may burn and cool at any hour, but not within a span
 * in which it is out of order.
 *
 * @param hours working hours by day of the week; a day that is not there is a day off
 * @param closed single days on which nobody works
 * @param outOfOrder spans in which the kiln may be neither loaded, fired, cooling nor unpacked
 */
public record KilnCalendar(
    Map<DayOfWeek, OpenHours> hours, SortedSet<LocalDate> closed, List<Span> outOfOrder) {
  /** Takes its own copies; refuses a kiln nobody ever tends. */
  public KilnCalendar {
    if (hours.isEmpty()) {
      throw new IllegalArgumentException("A kiln needs working hours on one day at least");
    }
    hours = Collections.unmodifiableMap(new EnumMap<>(hours));
    closed = Collections.unmodifiableSortedSet(new TreeSet<>(closed));
    outOfOrder = List.copyOf(outOfOrder);
  }

  /** The working hours of a day; empty on a day off. */
  public Optional<OpenHours> open(LocalDate day) {
    return closed.contains(day)
        ? Optional.empty()
        : Optional.ofNullable(hours.get(day.getDayOfWeek()));
  }

  /** Whether somebody is there for the whole span, which then lies within one working day. */
  public boolean isTended(Span span) {
    LocalDate day = span.from().toLocalDate();
    return open(day)
        .filter(open -> !span.from().toLocalTime().isBefore(open.from()))
        .filter(open -> !span.to().isAfter(day.atTime(open.to())))
        .isPresent();
  }

  /** The same with one more span out of order. */
  public KilnCalendar without(Span span) {
    List<Span> more = new ArrayList<>(outOfOrder);
    more.add(span);
    return new KilnCalendar(hours, closed, more);
  }
}
