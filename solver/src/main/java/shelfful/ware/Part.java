package shelfful.ware;

/** Which part of a lidded form a piece is. */
public enum Part {
  /** The pot by itself, because it has no lid or the lid is fired beside it. */
  POT,
  /** The pot with its lid on. */
  POT_WITH_LID,
  /** The lid by itself, fired beside its pot. */
  LID
}
