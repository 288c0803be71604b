package shelfful.ware;

/** How far a piece has come, in the order it gets there. */
public enum Stage {
  WET,
  LEATHER_HARD,
  BONE_DRY,
  BISQUE,
  GLAZED,
  FINISHED
}
