package shelfful.ware;

/** How a piece rests on or in another in a bisque firing. */
public enum PileWay {
  /** Upright in a piece of its own form, as bowls are stacked: each adds an increment of height. */
  NESTED,
  /** Upside down on a piece of its own form, rim on rim. */
  RIM_TO_RIM,
  /** Upright on a piece of its own form that is upside down, foot on foot. */
  FOOT_TO_FOOT,
  /** Upright inside a larger form, on the floor of its hollow. */
  INSIDE
}
