package shelfful.choice;

/**
 * A shelf whose content is to be chosen anew while the rest of a load stays.
 *
 * @param spot where its shelf lies
 * @param onTop whether nothing stands over it
 * @param heights for each height class what its level takes, in micrometres
 * @param lowestClass as high as its level must be in any case, for what lies beside it
 * @param paths the ways up through the kiln that it lies on, by index
 */
public record OpenLevel(int spot, boolean onTop, long[] heights, int lowestClass, int[] paths) {
  long takes(KnownLayer layer) {
    return heights[Math.max(lowestClass, layer.heightClass())];
  }
}
