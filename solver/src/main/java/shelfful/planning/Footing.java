package shelfful.planning;

import shelfful.planning.Stacking.LevelStand;

/** Whether what stays on a level can stand there when the level comes to lie at some height. */
@FunctionalInterface
interface Footing {
  /** Nothing stays anywhere. */
  Footing FREE = (column, level, stand) -> true;

  /**
   * Whether a level may lie like this.
   *
   * @param stand its room may be 0 when what comes above is not known yet
   */
  boolean allows(int column, int level, LevelStand stand);
}
