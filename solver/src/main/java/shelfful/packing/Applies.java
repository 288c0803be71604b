package shelfful.packing;

/** What of a body a {@link Room} must hold. */
public enum Applies {
  /** Only the foot. */
  FOOT,
  /** Every part, whatever its height. */
  BODY
}
