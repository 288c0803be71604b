package shelfful.week;

/**
 * How long ware rests between one work and the next, in whole days of 24 hours. Common practice
 * varies with clay and weather; there is no source, so every studio sets its own.
 *
 * @param dryingDays from the start of the day it was made until it is bone dry
 * @param glazingDays from unpacking the bisque until the glazed ware is dry enough to go in
 */
public record Pauses(int dryingDays, int glazingDays) {
  /** A week to dry, a day to glaze: common practice, no source. */
  public static final Pauses COMMON_PRACTICE = new Pauses(7, 1);

  private static final int MOST = 365;

  /** Refuses pauses that are negative or longer than a year. */
  public Pauses {
    if (dryingDays < 0 || glazingDays < 0 || dryingDays > MOST || glazingDays > MOST) {
      throw new IllegalArgumentException(
          "Drying and glazing take from 0 to 365 days, not " + dryingDays + " and " + glazingDays);
    }
  }
}
