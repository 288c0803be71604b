package shelfful.inspect;

/** From one height over the chamber floor to another, in micrometres. */
record HeightRange(long bottom, long top) {

  /** Whether there is a height inside of both; ranges that only touch share none. */
  boolean shares(HeightRange other) {
    return bottom < other.top && other.bottom < top;
  }
}
