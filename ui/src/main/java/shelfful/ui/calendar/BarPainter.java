package shelfful.ui.calendar;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Consumer;
import shelfful.ui.calendar.CalendarLayout.Box;
import shelfful.ui.calendar.CalendarPicture.Bar;
import shelfful.ui.calendar.CalendarPicture.Ghost;
import shelfful.week.FiringTimes;

/** Paints firings, and where one would stand that is dragged. */
final class BarPainter {
  private final CalendarLayout layout;
  private final Brush brush;
  private final PhasePainter phases;

  BarPainter(CalendarLayout layout, Brush brush, CalendarWords words) {
    this.layout = layout;
    this.brush = brush;
    this.phases = new PhasePainter(brush, words);
  }

  /** A firing; the chosen one has a thick edge, one that is held a double edge. */
  void bar(Bar bar, boolean chosen) {
    layout.bar(bar).filter(this::isSeen).ifPresent(box -> bar(bar, box, chosen));
  }

  private boolean isSeen(Box box) {
    return box.right() >= 0
        && box.x() <= layout.window().width()
        && box.bottom() >= layout.header();
  }

  private void bar(Bar bar, Box box, boolean chosen) {
    brush.fill(box, chosen ? Tone.GLOW : Tone.BENCH);
    lines(bar, box);
    phases(bar.times(), layout.phases(box));
    brush.outline(box, chosen ? Tone.INK : Tone.EDGE, chosen ? 2.5 : 1);
    if (bar.held()) {
      brush.outline(inner(box, 3), Tone.INK, 1);
    }
  }

  private static Box inner(Box box, double by) {
    return new Box(
        box.x() + by,
        box.y() + by,
        Math.max(0, box.width() - 2 * by),
        Math.max(0, box.height() - 2 * by));
  }

  /** What is cut off at the left moves into sight. */
  private void lines(Bar bar, Box box) {
    double side = layout.em() * 0.45;
    double left = Math.max(box.x(), 0) + side;
    double y = box.y() + layout.pad();
    for (CalendarPicture.Line line : bar.lines()) {
      Box room = new Box(left, y, box.right() - side - left, layout.line());
      brush.words(line.variants(), room, new Brush.Ink(Tone.INK, line.strong()));
      y += layout.line();
    }
  }

  private void phases(FiringTimes times, Box strip) {
    part(times.loads(), times.lit(), strip, phases::handsOn);
    part(times.lit(), times.hot(), strip, phases::heating);
    part(times.hot(), times.cold(), strip, phases::cooling);
    part(times.cold(), times.unpacks(), strip, phases::cold);
    part(times.unpacks(), times.unpacked(), strip, phases::handsOn);
    brush.line(strip.x(), strip.y(), strip.right(), strip.y(), Tone.EDGE);
  }

  private void part(LocalDateTime from, LocalDateTime to, Box strip, Consumer<Box> painter) {
    double x = layout.window().x(from);
    double width = layout.window().x(to) - x;
    if (width > 0) {
      painter.accept(new Box(x, strip.y(), width, strip.height()));
    }
  }

  /** Where a firing would stand: a dashed edge; hatched all over where it may not. */
  void ghost(Ghost ghost) {
    layout
        .row(ghost.kilnId())
        .map(row -> layout.bar(row, ghost.times().loads(), ghost.times().unpacked()))
        .ifPresent(box -> ghost(ghost, box));
  }

  private void ghost(Ghost ghost, Box box) {
    Tone tone = ghost.allowed() ? Tone.INK : Tone.FAULT;
    brush.fill(box, Tone.PAPER);
    if (!ghost.allowed()) {
      brush.hatch(box, Tone.FAULT, 9);
    }
    phases(ghost.times(), layout.phases(box));
    brush.dashes(7, 4);
    brush.outline(box, tone, 2.5);
    brush.dashes();
    Box room = new Box(box.x(), box.y() + layout.pad(), box.width(), layout.line());
    brush.wordsOn(List.of(ghost.words()), room, Tone.PAPER);
  }
}
