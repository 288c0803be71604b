package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;
import shelfful.ware.Zone;

/**
 * The room over a shelf.
 *
 * @param shelf it is over
 * @param top the lowest underside of a shelf over any part of it, or the lid; micrometres over the
 *     floor
 * @param underShelf whether it ends at a shelf and not at the lid
 * @param zone of the kiln that its middle lies in
 */
record LayerSpace(LaidShelf shelf, long top, boolean underShelf, Zone zone) {

  /** The room over every shelf, in the order of the layers. */
  static List<LayerSpace> of(Setting setting) {
    List<LayerSpace> spaces = new ArrayList<>();
    for (LaidShelf shelf : setting.shelves()) {
      long top = Long.MAX_VALUE;
      for (LaidShelf other : setting.shelves()) {
        if (other.underside() < top && other.isOver(shelf)) {
          top = other.underside();
        }
      }
      boolean underShelf = top < Long.MAX_VALUE;
      long end = underShelf ? top : setting.chamberHeight();
      spaces.add(
          new LayerSpace(shelf, end, underShelf, zone(shelf.top() + end, setting.chamberHeight())));
    }
    return spaces;
  }

  /**
   * The third of the chamber that a height lies in, given twice; on the border it is the upper one.
   */
  private static Zone zone(long twiceHeight, long chamberHeight) {
    if (3 * twiceHeight < 2 * chamberHeight) {
      return Zone.BOTTOM;
    }
    return 3 * twiceHeight < 4 * chamberHeight ? Zone.MIDDLE : Zone.TOP;
  }

  long clearHeight() {
    return top - shelf.top();
  }
}
