package shelfful.planning;

import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Zone;

/** The third of the chamber in which the middle of a layer's clear height lies. */
final class Zones {
  private Zones() {}

  static Zone of(Stand stand, LevelStand level) {
    boolean top = level.postsOn().isEmpty();
    long over = top ? stand.chamberHeight() : level.z() + level.room() + stand.headroom();
    long sixTimesMiddle = 3 * (level.z() + over);
    if (sixTimesMiddle < 2 * stand.chamberHeight()) {
      return Zone.BOTTOM;
    }
    return sixTimesMiddle < 4 * stand.chamberHeight() ? Zone.MIDDLE : Zone.TOP;
  }
}
