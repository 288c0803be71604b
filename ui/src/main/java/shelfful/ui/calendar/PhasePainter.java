package shelfful.ui.calendar;

import shelfful.ui.calendar.CalendarLayout.Box;

/**
 * The parts of a firing, told apart by their patterns and, where there is room, by words: hands-on
 * is filled, heating is hatched, cooling is dotted, cold and waiting to be unpacked is blank.
 */
final class PhasePainter {
  private static final double HATCH = 5;
  private static final double DOTS = 6;

  private final Brush brush;
  private final CalendarWords words;

  PhasePainter(Brush brush, CalendarWords words) {
    this.brush = brush;
    this.words = words;
  }

  void handsOn(Box box) {
    brush.fill(box, Tone.QUIET);
    brush.wordsOn(words.handsOn(), box, Tone.PAPER);
  }

  void heating(Box box) {
    brush.fill(box, Tone.GLOW);
    brush.hatch(box, Tone.EMBER, HATCH);
    brush.wordsOn(words.heating(), box, Tone.GLOW);
  }

  void cooling(Box box) {
    brush.fill(box, Tone.BENCH);
    brush.dots(box, Tone.QUIET, DOTS);
    brush.wordsOn(words.cooling(), box, Tone.BENCH);
  }

  void cold(Box box) {
    brush.fill(box, Tone.PAPER);
  }

  /** A kiln that cannot be used. */
  void outOfOrder(Box box) {
    brush.hatch(box, Tone.EDGE, 2 * HATCH);
    brush.wordsOn(words.outOfOrder(), box, Tone.BENCH);
  }
}
