package shelfful.planning;

import shelfful.geometry.Region;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;

/** The chamber and its shelves as regions of the plan, in the chamber's frame, millimetres. */
public final class KilnPlan {
  private KilnPlan() {}

  /** The inside of a chamber. */
  public static Region chamber(FloorPlan plan) {
    return KilnRegions.chamber(plan);
  }

  /** What a shelf covers where it lies. */
  public static Region shelf(Shelf shelf, ShelfPlace place) {
    ShelfFrame frame = ShelfFrame.of(place);
    double[] origin = frame.toShelf(0, 0);
    ShelfFrame back = new ShelfFrame(origin[0], origin[1], -frame.turn());
    return KilnRegions.in(back, KilnRegions.shelf(shelf.outline()));
  }
}
