package shelfful.ui.calendar;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import shelfful.week.FiringTimes;
import shelfful.week.Span;

/**
 * All that a calendar of firings shows.
 *
 * @param from the first moment that can be scrolled to
 * @param to the last one
 * @param rows the kilns, from top to bottom
 * @param bars the firings, in the order of their loading
 */
public record CalendarPicture(
    LocalDateTime from, LocalDateTime to, List<Row> rows, List<Bar> bars) {
  /** Takes its own copies; refuses a time that ends before it begins. */
  public CalendarPicture {
    rows = List.copyOf(rows);
    bars = List.copyOf(bars);
    if (!to.isAfter(from)) {
      throw new IllegalArgumentException("A calendar must end after it begins, not at " + to);
    }
  }

  /**
   * A kiln.
   *
   * @param kilnId its id
   * @param name as it is written over its row
   * @param tended when somebody is there
   * @param outOfOrder when it cannot be used
   */
  public record Row(String kilnId, String name, List<Span> tended, List<Span> outOfOrder) {
    /** Takes its own copies. */
    public Row {
      tended = List.copyOf(tended);
      outOfOrder = List.copyOf(outOfOrder);
    }
  }

  /**
   * A firing.
   *
   * @param id of the firing
   * @param kilnId the row it lies in
   * @param times of its parts
   * @param lines what is written in it, from top to bottom
   * @param held whether it stays when the rest is planned again
   */
  public record Bar(String id, String kilnId, FiringTimes times, List<Line> lines, boolean held) {
    /** Takes its own copy. */
    public Bar {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line of words in a bar.
   *
   * @param variants the same said shorter and shorter; the longest that has room is written
   * @param strong whether it is written bold
   */
  public record Line(List<String> variants, boolean strong) {
    /** Takes its own copy. */
    public Line {
      variants = List.copyOf(variants);
    }
  }

  /**
   * Where a firing would stand that is dragged.
   *
   * @param kilnId the row
   * @param times of its parts
   * @param allowed whether it may stand there
   * @param words what is written on it
   */
  public record Ghost(String kilnId, FiringTimes times, boolean allowed, String words) {}

  /** The bar of a firing. */
  public Optional<Bar> bar(String id) {
    return bars.stream().filter(bar -> bar.id().equals(id)).findFirst();
  }
}
