package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Bound;
import shelfful.geometry.DiscBound;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.OvalBound;
import shelfful.geometry.Region;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Length;

/**
 * Chambers in the chamber frame and shelves in their own frame, as convex regions in millimetres.
 */
final class KilnRegions {
  /** A flat side faces the loader, towards −y. */
  private static final double TOWARDS_LOADER = -Math.PI / 2;

  private static final double TOWARDS_X = 0;
  private static final double TOWARDS_Y = Math.PI / 2;

  private KilnRegions() {}

  static Region chamber(FloorPlan plan) {
    if (plan instanceof FloorPlan.Round round) {
      return Region.disc(half(round.diameter()));
    }
    if (plan instanceof FloorPlan.Polygon polygon) {
      return Region.regularPolygon(polygon.sides(), half(polygon.acrossFlats()), TOWARDS_LOADER);
    }
    if (plan instanceof FloorPlan.Oval oval) {
      return Region.oval(half(oval.width()), half(oval.depth()));
    }
    return Region.rectangle(plan.width().millimetres(), plan.depth().millimetres());
  }

  static Region shelf(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound full) {
      return Region.disc(half(full.diameter()));
    }
    if (outline instanceof ShelfOutline.HalfRound cut) {
      return Region.halfDisc(half(cut.diameter()), TOWARDS_Y, half(cut.sawCut()));
    }
    if (outline instanceof ShelfOutline.QuarterRound cut) {
      return Region.halfDisc(half(cut.diameter()), TOWARDS_Y, half(cut.sawCut()))
          .beyond(TOWARDS_X, half(cut.sawCut()));
    }
    if (outline instanceof ShelfOutline.Polygon polygon) {
      return Region.regularPolygon(polygon.sides(), half(polygon.acrossFlats()), TOWARDS_LOADER);
    }
    if (outline instanceof ShelfOutline.HalfPolygon cut) {
      return Region.regularPolygon(cut.sides(), half(cut.acrossFlats()), TOWARDS_LOADER)
          .beyond(TOWARDS_Y, half(cut.sawCut()));
    }
    ShelfOutline.Rectangle rectangle = (ShelfOutline.Rectangle) outline;
    return Region.rectangle(rectangle.width().millimetres(), rectangle.depth().millimetres());
  }

  private static double half(Length length) {
    return length.millimetres() / 2;
  }

  /** The same region in another frame. */
  static Region in(ShelfFrame frame, Region region) {
    List<Bound> bounds = new ArrayList<>();
    for (Bound bound : region.bounds()) {
      bounds.add(in(frame, bound));
    }
    return new Region(bounds);
  }

  private static Bound in(ShelfFrame frame, Bound bound) {
    if (bound instanceof HalfPlane wall) {
      return frame.toShelf(wall);
    }
    if (bound instanceof DiscBound disc) {
      double[] centre = frame.toShelf(disc.x(), disc.y());
      return new DiscBound(centre[0], centre[1], disc.radius());
    }
    OvalBound oval = (OvalBound) bound;
    double[] centre = frame.toShelf(oval.x(), oval.y());
    return new OvalBound(
        centre[0], centre[1], oval.halfLength(), oval.halfWidth(), oval.angle() - frame.turn());
  }
}
