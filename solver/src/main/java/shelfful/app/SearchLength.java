package shelfful.app;

import java.time.Duration;

/**
 * How long to search: a number of steps, which is repeatable, or a time, which is not.
 *
 * @param steps of the search; −1 when it is ended by time
 * @param time of no meaning when steps are given
 */
public record SearchLength(long steps, Duration time) {

  /** So many steps; 0 gives the first load only. */
  public static SearchLength ofSteps(long steps) {
    if (steps < 0) {
      throw new IllegalArgumentException("Steps must not be negative: " + steps);
    }
    return new SearchLength(steps, Duration.ZERO);
  }

  /** So long. */
  public static SearchLength ofTime(Duration time) {
    return new SearchLength(-1, time);
  }

  public boolean isInSteps() {
    return steps >= 0;
  }
}
