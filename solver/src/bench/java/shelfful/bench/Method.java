package shelfful.bench;

/** Whose load it is. All keep the same rules and are judged by the same inspector. */
enum Method {
  /** The planner with its whole budget. */
  PLANNER("planner"),
  /** The planner's first loads, before any search. */
  GREEDY("greedy"),
  /** Rows from the back, tallest first, without a second thought. */
  BY_HAND("by hand"),
  /** The best choice of layers out of all that the other loads have. */
  EXACT_CHOICE("exact choice");

  private final String words;

  Method(String words) {
    this.words = words;
  }

  @Override
  public String toString() {
    return words;
  }
}
