package shelfful.planning;

/** How free planning is with a lot. */
enum Hold {
  /** Its pieces may stand anywhere or wait. */
  FREE,

  /**
   * Its pieces may stand anywhere, but belong to a set of which something is kept: they must go.
   */
  MATE,

  /** Its pieces stay where they are. */
  KEPT
}
