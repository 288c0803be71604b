package shelfful.ui.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import shelfful.ui.calendar.CalendarLayout.Box;
import shelfful.week.Span;

/** What lies under the bars: days, hours, and when somebody works. */
final class DayPainter {
  private static final int HOURS = 6;
  private static final double LEAST_FOR_HOURS = 240;
  private static final Brush.Ink PLAIN = new Brush.Ink(Tone.INK, false);

  private final CalendarLayout layout;
  private final Brush brush;
  private final CalendarWords words;

  DayPainter(CalendarLayout layout, Brush brush, CalendarWords words) {
    this.layout = layout;
    this.brush = brush;
    this.words = words;
  }

  private TimeWindow window() {
    return layout.window();
  }

  /** The ground of every row, with its kiln's hours and name. */
  void rows() {
    PhasePainter phases = new PhasePainter(brush, words);
    for (int i = 0; i < layout.picture().rows().size(); i++) {
      CalendarPicture.Row row = layout.picture().rows().get(i);
      double top = layout.rowTop(i);
      Box all = new Box(0, top, window().width(), layout.rowHeight());
      brush.fill(all, Tone.DESKTOP);
      row.tended().forEach(span -> brush.fill(across(span, all), Tone.PAPER));
      row.outOfOrder().forEach(span -> phases.outOfOrder(across(span, all)));
      days(top, all.bottom());
      brush.line(0, top, all.right(), top, Tone.EDGE);
      Box name = new Box(layout.pad() * 2, top, all.width(), layout.name());
      brush.words(List.of(row.name()), name, new Brush.Ink(Tone.INK, true));
    }
  }

  private Box across(Span span, Box row) {
    double from = window().x(span.from());
    return new Box(from, row.y(), window().x(span.to()) - from, row.height());
  }

  private void days(double top, double bottom) {
    LocalDateTime end = window().time(window().width());
    for (LocalDate day = first(); day.atStartOfDay().isBefore(end); day = day.plusDays(1)) {
      double x = window().x(day.atStartOfDay());
      brush.line(x, top, x, bottom, Tone.LINE);
    }
  }

  private LocalDate first() {
    return window().time(0).toLocalDate();
  }

  /** The days over the rows, and hours where there is room. */
  void header() {
    double high = layout.header();
    brush.fill(new Box(0, 0, window().width(), high), Tone.BENCH);
    LocalDateTime end = window().time(window().width());
    int variant = variant(end);
    for (LocalDate day = first(); day.atStartOfDay().isBefore(end); day = day.plusDays(1)) {
      day(day, high, variant);
    }
    brush.line(0, high, window().width(), high, Tone.EDGE);
  }

  /** Which of the ways to say a day has room on every day, so that all are said alike. */
  private int variant(LocalDateTime end) {
    double room = window().perDay() - 2 * layout.pad();
    int most = 0;
    for (LocalDate day = first(); day.atStartOfDay().isBefore(end); day = day.plusDays(1)) {
      most = Math.max(most, brush.fits(words.day().apply(day), room));
    }
    return most;
  }

  private void day(LocalDate day, double high, int variant) {
    double x = window().x(day.atStartOfDay());
    boolean hours = window().perDay() >= LEAST_FOR_HOURS;
    List<String> names = words.day().apply(day);
    boolean shortest = variant > 0 && variant == names.size() - 1;
    double top = shortest ? high * 0.5 : 0;
    boolean week = shortest && day.getDayOfWeek() == DayOfWeek.MONDAY;
    brush.line(x, week ? 0 : top, x, high, Tone.LINE);
    double tall = shortest ? high * 0.5 : hours ? high * 0.55 : high;
    brush.words(names.subList(variant, names.size()), box(x, top, tall, 1), PLAIN);
    if (week || shortest && day.equals(first())) {
      int days = DayOfWeek.SUNDAY.getValue() - day.getDayOfWeek().getValue() + 1;
      brush.words(names, box(x, 0, high * 0.5, days), PLAIN);
    }
    if (hours) {
      hours(day, high);
    }
  }

  /** Room from a day's beginning; a day that is cut off at the left keeps its name in sight. */
  private Box box(double x, double top, double high, int days) {
    double left = Math.max(0, x) + layout.pad();
    return new Box(left, top, x + days * window().perDay() - left, high);
  }

  private void hours(LocalDate day, double high) {
    for (int hour = HOURS; hour < 24; hour += HOURS) {
      double at = window().x(day.atTime(hour, 0));
      brush.line(at, high * 0.85, at, high, Tone.EDGE);
      Box room = new Box(at - layout.em() * 0.7, high * 0.5, layout.em() * 3, high * 0.36);
      brush.words(
          List.of(String.format(Locale.ROOT, "%02d", hour)),
          room,
          new Brush.Ink(Tone.QUIET, false));
    }
  }
}
