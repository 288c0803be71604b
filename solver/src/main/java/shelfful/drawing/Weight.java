package shelfful.drawing;

/** The two cuts of the sheets' typeface. */
public enum Weight {
  REGULAR,
  BOLD
}
