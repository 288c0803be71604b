package shelfful.schedule;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shelfful.week.KilnWork;
import shelfful.week.OpenHours;
import shelfful.week.Span;
import shelfful.week.WeekRequest;

/**
 * The hours of one kiln: when it can be loaded next and when that firing is unpacked. Loading and
 * unpacking each lie within one working day; burning and cooling go on day and night.
 */
final class Timetable {
  private record Window(long from, long to) {}

  private final List<Window> tended = new ArrayList<>();
  private final List<Window> busy = new ArrayList<>();
  private final long end;

  /**
   * The timetable of a kiln.
   *
   * @param taken spans in which it is busy already
   */
  Timetable(WeekRequest request, KilnWork work, List<Span> taken) {
    MinuteClock clock = new MinuteClock(request);
    this.end = clock.end();
    LocalDate day = request.start().toLocalDate();
    for (; !day.isAfter(request.lastDay()); day = day.plusDays(1)) {
      Optional<OpenHours> hours = work.calendar().open(day);
      if (hours.isPresent()) {
        long from = Math.max(0, clock.minute(day.atTime(hours.get().from())));
        tended.add(new Window(from, clock.minute(day.atTime(hours.get().to()))));
      }
    }
    List<Span> spans = new ArrayList<>(work.calendar().outOfOrder());
    spans.addAll(taken);
    for (Span span : spans) {
      long from = clock.minute(span.from().truncatedTo(ChronoUnit.MINUTES));
      busy.add(new Window(from, clock.minute(span.to())));
    }
    busy.sort(Comparator.comparingLong(Window::from));
  }

  /** The first firing that is not loaded before a minute; empty when the week has none left. */
  Optional<Turnaround> next(KilnProgram program, long notBefore) {
    long from = Math.max(0, notBefore);
    while (true) {
      Optional<Turnaround> found = byTheHours(program, from);
      if (found.isEmpty()) {
        return found;
      }
      Optional<Window> inTheWay = inTheWay(found.get());
      if (inTheWay.isEmpty()) {
        return found;
      }
      from = inTheWay.get().to();
    }
  }

  private Optional<Turnaround> byTheHours(KilnProgram program, long from) {
    long loads = start(program.loading(), from);
    if (loads < 0) {
      return Optional.empty();
    }
    return Optional.of(loads)
        .map(at -> start(program.unpacking(), at + program.loading() + program.burning()))
        .filter(unpacks -> unpacks >= 0 && unpacks + program.unpacking() <= end)
        .map(unpacks -> new Turnaround(loads, unpacks, unpacks + program.unpacking()));
  }

  /** The first minute from which somebody is there so long; −1 when there is none. */
  private long start(long length, long from) {
    for (int i = firstEndingAfter(from); i < tended.size(); i++) {
      long at = Math.max(from, tended.get(i).from());
      if (at + length <= tended.get(i).to()) {
        return at;
      }
    }
    return -1;
  }

  private int firstEndingAfter(long minute) {
    int low = 0;
    int high = tended.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (tended.get(middle).to() > minute) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private Optional<Window> inTheWay(Turnaround turn) {
    for (Window window : busy) {
      if (window.from() < turn.unpacked() && turn.loads() < window.to()) {
        return Optional.of(window);
      }
    }
    return Optional.empty();
  }

  /** When a firing loaded at a given minute can be unpacked, whether or not anybody loads then. */
  Optional<Turnaround> loadedAt(KilnProgram program, long loads) {
    long unpacks = start(program.unpacking(), loads + program.loading() + program.burning());
    return unpacks < 0
        ? Optional.empty()
        : Optional.of(new Turnaround(loads, unpacks, unpacks + program.unpacking()));
  }
}
