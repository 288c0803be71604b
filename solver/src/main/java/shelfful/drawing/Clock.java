package shelfful.drawing;

import java.util.Locale;
import shelfful.measure.Angle;

/** Directions as on a clock face laid on the shelf: 12:00 is the far side, 6:00 the front. */
final class Clock {
  private static final int MINUTES = 720;

  private Clock() {}

  /**
   * The direction of a step to the right and away, to the nearest minute of the hour hand (half a
   * degree).
   */
  static String towards(double right, double away) {
    double turn = Math.atan2(right, away) / (2 * Math.PI);
    int minutes = Math.floorMod((int) Math.round(turn * MINUTES), MINUTES);
    int hour = minutes / 60 == 0 ? 12 : minutes / 60;
    return String.format(Locale.ROOT, "%d:%02d", hour, minutes % 60);
  }

  static String of(Angle direction) {
    return towards(Math.cos(direction.radians()), Math.sin(direction.radians()));
  }
}
