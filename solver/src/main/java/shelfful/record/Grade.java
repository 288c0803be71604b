package shelfful.record;

/** How a piece came out. */
public enum Grade {
  /** To be sold as it is. */
  GOOD,
  /** Flawed, but it can be used. */
  SECOND,
  /** Not to be used. */
  LOST;

  /** Whether something is wrong with it. */
  public boolean isFlawed() {
    return this != GOOD;
  }
}
