package shelfful.learning;

/** What the records allow to be said of a cell. */
public enum Verdict {
  /** There are too few pieces to say anything. */
  TOO_FEW,
  /** Nothing beyond chance. */
  LIKE_THE_REST,
  /** More flawed pieces than chance makes. */
  WORSE,
  /** Fewer flawed pieces than chance makes. */
  BETTER
}
