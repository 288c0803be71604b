package shelfful.files;

import java.util.List;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Point;

/**
 * A shelf at its place in the chamber, as far as checking a studio goes: a convex ring of corners.
 */
final class PlacedShelf {
  private final String id;
  private final ConvexRing ring;

  private PlacedShelf(String id, ConvexRing ring) {
    this.id = id;
    this.ring = ring;
  }

  static PlacedShelf of(Shelf shelf, ShelfPlace place) {
    ConvexRing own = ShelfRing.of(shelf.outline());
    return new PlacedShelf(
        shelf.id(),
        own.movedTo(
            place.at().x().millimetres(), place.at().y().millimetres(), place.turn().radians()));
  }

  String id() {
    return id;
  }

  /** How far the shelf reaches past the wall, in millimetres; 0 or less when it does not. */
  double reachesPast(FloorPlan plan) {
    return ring.mostOf((x, y) -> pastWall(plan, x, y));
  }

  private static double pastWall(FloorPlan plan, double x, double y) {
    double halfWidth = plan.width().millimetres() / 2;
    double halfDepth = plan.depth().millimetres() / 2;
    if (plan instanceof FloorPlan.Round) {
      return Math.hypot(x, y) - halfWidth;
    }
    if (plan instanceof FloorPlan.Rectangle) {
      return Math.max(Math.abs(x) - halfWidth, Math.abs(y) - halfDepth);
    }
    if (plan instanceof FloorPlan.Polygon polygon) {
      return ConvexRing.regular(polygon.sides(), halfWidth).outside(x, y);
    }
    return (Math.hypot(x / halfWidth, y / halfDepth) - 1) * Math.min(halfWidth, halfDepth);
  }

  /** Whether any part of a post of this radius is under the shelf. */
  boolean liesOn(Point post, double radius) {
    return ring.distanceTo(post.x().millimetres(), post.y().millimetres()) < radius;
  }

  /** Whether the shelf's centre of mass lies within the ring of these posts. */
  boolean middleIsWithin(List<Point> posts) {
    double[] middle = ring.centroid();
    return ConvexRing.hullOf(posts).distanceTo(middle[0], middle[1]) == 0;
  }

  boolean overlaps(PlacedShelf other, double slack) {
    return ring.overlapWith(other.ring) > slack;
  }
}
