package shelfful.kiln;

import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * A part of the chamber that ware and posts must stay clear of. Seen from above it is a straight
 * bar with round ends (a disc when both ends are the same point).
 *
 * @param name as the potter says it
 * @param kind what it is
 * @param from one end of the bar's middle line, chamber frame
 * @param to the other end
 * @param across the bar's width
 * @param bottom lower height over the chamber floor
 * @param top upper height over the chamber floor
 */
public record KeepOut(
    String name, Kind kind, Point from, Point to, Length across, Length bottom, Length top) {
  /** Refuses a bar without width and heights out of order. */
  public KeepOut {
    if (!across.isPositive()) {
      throw new IllegalArgumentException("The keep-out " + name + " must be wider than 0");
    }
    if (bottom.micrometres() < 0 || !top.isLongerThan(bottom)) {
      throw new IllegalArgumentException(
          "The keep-out " + name + " must go up from a height of at least 0");
    }
  }

  /** What may be in the way. */
  public enum Kind {
    /** Fixed to the wall: no ware near it, no post or shelf in it. */
    THERMOCOUPLE(true),
    /** The line of sight from the peephole: no ware near it, no post or shelf in it. */
    PEEPHOLE_LINE(true),
    /**
     * Stands on whichever shelf lies under it: no ware near it and no post in it, but a shelf may
     * be.
     */
    CONE_PACK(false);

    private final boolean stopsShelves;

    Kind(boolean stopsShelves) {
      this.stopsShelves = stopsShelves;
    }

    /** Whether no shelf may pass through it either. */
    public boolean stopsShelves() {
      return stopsShelves;
    }
  }
}
