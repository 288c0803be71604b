package shelfful.ui.calendar;

import java.util.Locale;

/** The colours of the look that a calendar is painted with. */
enum Tone {
  INK,
  QUIET,
  PAPER,
  BENCH,
  DESKTOP,
  LINE,
  EDGE,
  EMBER,
  GLOW,
  FAULT;

  /** What it is called in the stylesheet. */
  String style() {
    return "tone-" + name().toLowerCase(Locale.ROOT);
  }
}
