package shelfful.ui.calendar;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Where everything of a calendar lies in its window, in pixels.
 *
 * @param picture what is shown
 * @param window which time is seen
 * @param em the size of letters
 * @param top pixels of the rows that lie above the window
 */
record CalendarLayout(CalendarPicture picture, TimeWindow window, double em, double top) {
  private static final double HEADER = 3.2;
  private static final double NAME = 1.9;
  private static final double LINE = 1.4;
  private static final double PAD = 0.35;
  private static final double PHASES = 1.7;
  private static final int LINES = 4;

  /** A rectangle. */
  record Box(double x, double y, double width, double height) {
    double right() {
      return x + width;
    }

    double bottom() {
      return y + height;
    }

    boolean contains(double atX, double atY) {
      return atX >= x && atX <= right() && atY >= y && atY <= bottom();
    }
  }

  double header() {
    return HEADER * em;
  }

  double line() {
    return LINE * em;
  }

  double pad() {
    return PAD * em;
  }

  /** How high the name of a row is. */
  double name() {
    return NAME * em;
  }

  double rowHeight() {
    return name() + barHeight() + 2 * PAD * em;
  }

  private double barHeight() {
    return LINES * LINE * em + PHASES * em + PAD * em;
  }

  /** Height of header and rows together. */
  double height() {
    return header() + picture.rows().size() * rowHeight();
  }

  double rowTop(int row) {
    return header() + row * rowHeight() - top;
  }

  /** The whole bar between two moments in a row. */
  Box bar(int row, LocalDateTime from, LocalDateTime to) {
    double x = window.x(from);
    return new Box(x, rowTop(row) + name(), Math.max(2, window.x(to) - x), barHeight());
  }

  Optional<Box> bar(CalendarPicture.Bar bar) {
    return row(bar.kilnId()).map(row -> bar(row, bar.times().loads(), bar.times().unpacked()));
  }

  /** The strip at the foot of a bar that its parts are drawn in. */
  Box phases(Box bar) {
    return new Box(bar.x(), bar.bottom() - PHASES * em, bar.width(), PHASES * em);
  }

  Optional<Integer> row(String kilnId) {
    List<String> ids = picture.rows().stream().map(CalendarPicture.Row::kilnId).toList();
    return Optional.of(ids.indexOf(kilnId)).filter(row -> row >= 0);
  }

  /** The bar at a pixel. */
  Optional<CalendarPicture.Bar> barAt(double x, double y) {
    return y < header()
        ? Optional.empty()
        : picture.bars().stream()
            .filter(bar -> bar(bar).filter(box -> box.contains(x, y)).isPresent())
            .findFirst();
  }

  /** The kiln whose row is at a height, or nearest to it. */
  Optional<String> kilnAt(double y) {
    int last = picture.rows().size() - 1;
    int row = (int) Math.floor((y + top - header()) / rowHeight());
    return last < 0
        ? Optional.empty()
        : Optional.of(picture.rows().get(Math.max(0, Math.min(last, row))).kilnId());
  }
}
