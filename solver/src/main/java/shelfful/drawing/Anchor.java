package shelfful.drawing;

/** Which part of a text lies at its spot. */
public enum Anchor {
  START,
  MIDDLE,
  END
}
