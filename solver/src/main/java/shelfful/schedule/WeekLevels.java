package shelfful.schedule;

/** The places of a week's score, the most important first. */
final class WeekLevels {
  /** Days that pieces are late, summed over pieces. */
  static final int LATE = 0;

  /** Pieces that miss a firing, for each firing missed. */
  static final int WAITING = 1;

  /** How many firings. */
  static final int FIRINGS = 2;

  /** How often orders that asked to go together are split. */
  static final int SPLIT = 3;

  /** How uneven the firings are filled: the fuller some are, the more room the others keep. */
  static final int FULL = 4;

  /** Pieces that change kiln or day against the plan before. */
  static final int CHANGED = 5;

  /** When firings are unpacked, summed over pieces, in hours. */
  static final int FLOW = 6;

  static final int COUNT = 7;

  private WeekLevels() {}
}
