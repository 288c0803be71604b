package shelfful.bound;

/** What stops a load from holding more. */
public enum LimitCause {
  /** Everything that may go in goes in. */
  LIST("the list itself"),
  /** The area of the shelves, with the height of the chamber. */
  AREA("the shelves' area"),
  /** How near discs can stand to each other. */
  SPACING("how close pieces can stand"),
  /** The room in the chamber, where pieces may be piled. */
  VOLUME("the room in the chamber"),
  /** What a shelf may carry. */
  MASS("what the shelves carry"),
  /** How many shelves there are. */
  SHELVES("the number of shelves"),
  /** How many posts there are, and how long. */
  POSTS("the posts in the cupboard"),
  /** How high the chamber is. */
  HEIGHT("the height of the chamber");

  private final String words;

  LimitCause(String words) {
    this.words = words;
  }

  /** In words that end a sentence beginning with "limited by". */
  public String words() {
    return words;
  }
}
