package shelfful.studio;

import java.util.List;
import shelfful.ware.Catcher;
import shelfful.ware.KeptApart;

/**
 * How this pottery sets its ware.
 *
 * @param clearances the distances kept
 * @param bellyMayPassEdge whether a body may reach past the edge of its shelf, as far as the wall
 *     clearance allows; if not, every body stays over its shelf
 * @param mostPostPieces how many posts may be stacked to one standing post, 1 or 2
 * @param catcher what goes under runny ware
 * @param keptApart glazes that mark each other
 * @param dueSoonDays ware due within so many days after the firing day counts double
 */
public record HouseRules(
    Clearances clearances,
    boolean bellyMayPassEdge,
    int mostPostPieces,
    Catcher catcher,
    List<KeptApart> keptApart,
    int dueSoonDays) {
  /** Takes its own copy; refuses more than two stacked posts and negative days. */
  public HouseRules {
    keptApart = List.copyOf(keptApart);
    if (mostPostPieces < 1 || mostPostPieces > 2) {
      throw new IllegalArgumentException(
          "A standing post is made of 1 or 2 pieces, not " + mostPostPieces);
    }
    if (dueSoonDays < 0) {
      throw new IllegalArgumentException("Days must not be negative: " + dueSoonDays);
    }
  }
}
