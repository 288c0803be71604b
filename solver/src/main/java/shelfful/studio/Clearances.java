package shelfful.studio;

import shelfful.measure.Length;

/**
 * The distances kept in a setting. A form's tolerance is added to every one of them that it is in.
 *
 * <p>Sources disagree on each figure; the defaults are common practice without a published source.
 *
 * @param glazedToGlazed between glazed pieces (a glaze may ask for more)
 * @param bisqueToBisque between pieces in a bisque firing; 0 lets them touch
 * @param wareToPost between ware and a post
 * @param wareToWall between ware and the wall or an element
 * @param wareToKeepOut between ware and a thermocouple, peephole line or cone pack
 * @param footToShelfEdge how far in from the shelf's edge the whole foot stands
 * @param headroom between the highest point of a piece and the shelf above it
 * @param underLid between the highest point of a piece and the lid or roof
 * @param offFloor the least height of the lowest shelf's underside over the chamber floor
 * @param leastShelfToShelf the least clear height of a layer under another shelf, wished for even
 *     heat
 */
public record Clearances(
    Length glazedToGlazed,
    Length bisqueToBisque,
    Length wareToPost,
    Length wareToWall,
    Length wareToKeepOut,
    Length footToShelfEdge,
    Length headroom,
    Length underLid,
    Length offFloor,
    Length leastShelfToShelf) {

  /**
   * Common practice, no source: a quarter of an inch between glazed ware, half an inch of headroom,
   * and so on.
   */
  public static final Clearances COMMON_PRACTICE =
      new Clearances(
          Length.ofMillimetres(6.4),
          Length.ZERO,
          Length.ofMillimetres(10),
          Length.ofMillimetres(25),
          Length.ofMillimetres(25),
          Length.ofMillimetres(5),
          Length.ofMillimetres(12.7),
          Length.ofMillimetres(25),
          Length.ofMillimetres(25),
          Length.ofMillimetres(64));
}
