package shelfful.drawing;

/**
 * How words are set. The sheets use these few and no others.
 *
 * @param size in points, at least 8: smaller cannot be read at arm's length
 */
record TextStyle(double size, Weight weight, Ink ink) {
  static final TextStyle TITLE = new TextStyle(20, Weight.BOLD, Ink.BLACK);
  static final TextStyle HEAD = new TextStyle(13, Weight.BOLD, Ink.BLACK);
  static final TextStyle SUBHEAD = new TextStyle(11, Weight.REGULAR, Ink.BLACK);
  static final TextStyle SECTION = new TextStyle(10, Weight.BOLD, Ink.BLACK);
  static final TextStyle BODY = new TextStyle(9, Weight.REGULAR, Ink.BLACK);
  static final TextStyle STRONG = new TextStyle(9, Weight.BOLD, Ink.BLACK);
  static final TextStyle SMALL = new TextStyle(8, Weight.REGULAR, Ink.BLACK);
  static final TextStyle SMALL_STRONG = new TextStyle(8, Weight.BOLD, Ink.BLACK);
  static final TextStyle QUIET = new TextStyle(8, Weight.REGULAR, Ink.DARK);
  static final TextStyle REVERSED = new TextStyle(8, Weight.BOLD, Ink.WHITE);

  private static final double SMALLEST = 8;

  TextStyle {
    if (size < SMALLEST) {
      throw new IllegalArgumentException("Text must be at least 8 points, not " + size);
    }
  }

  Wording wording() {
    return new Wording(weight, size);
  }

  /** From one base line to the next, in millimetres. */
  double pitch() {
    return size * Typeface.MILLIMETRES_PER_POINT * 1.3;
  }
}
