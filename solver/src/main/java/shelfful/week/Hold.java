package shelfful.week;

/** How much of a planned firing must stay when the week is planned again. */
public enum Hold {
  /** Nothing. */
  FREE,
  /**
   * Kiln, program and the time of loading, which may lie outside the working hours because somebody
   * said so; what goes in may change.
   */
  TIME,
  /** Everything: time, pieces and where each stands. */
  ALL
}
