package shelfful.packing;

/** What of a body a {@link Room} must hold, or must keep clear of an {@link Obstacle}. */
public enum Applies {
  /** Only the foot. */
  FOOT,
  /** Every part, whatever its height. */
  BODY
}
