package shelfful.planning;

import shelfful.geometry.Disc;
import shelfful.geometry.Gap;
import shelfful.geometry.Pose;
import shelfful.geometry.Region;
import shelfful.measure.Point;

/** Whether a post reaches under a shelf: a post over the joint of two halves carries both. */
final class PostUnderShelf {
  private PostUnderShelf() {}

  static boolean touches(Stand stand, Spot spot, Point at) {
    double radius = stand.cupboard().widest() / 2;
    double[] centre = spot.frame().toShelf(at.x().millimetres(), at.y().millimetres());
    Region shelf = KilnRegions.shelf(spot.shelves().get(0).outline());
    double inside = Gap.inside(new Disc(0, 0, radius), Pose.at(centre[0], centre[1]), shelf);
    return inside > -2 * radius;
  }
}
