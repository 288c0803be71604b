package shelfful.choice;

/**
 * A column of shelves as far as heights go. Heights in micrometres.
 *
 * @param spots the places of its shelves, by index
 * @param below index of the column it stands on, or −1 when it stands on the floor
 * @param capacity of what may be built from the floor's posts up; of no matter unless it stands on
 *     the floor
 * @param middle for each height class what a level takes when posts stand on it; {@link #NEVER}
 *     when no post is long enough
 * @param top the same for a level with nothing over it
 * @param mostLevels as many shelves as there are
 */
public record StackColumn(
    int[] spots, int below, long capacity, long[] middle, long[] top, int mostLevels) {
  /** Higher than any chamber. */
  public static final long NEVER = Long.MAX_VALUE / 4;

  /** For each height class what a level takes, with or without anything over it. */
  public long[] takes(boolean onTop) {
    return onTop ? top : middle;
  }
}
