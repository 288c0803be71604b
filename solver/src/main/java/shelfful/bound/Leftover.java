package shelfful.bound;

import java.util.ArrayList;
import java.util.List;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.geometry.Bound;
import shelfful.geometry.DiscBound;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.OvalBound;
import shelfful.geometry.Region;

/**
 * Where the axis of a piece can be when some shelves over it leave it no height: outside of those
 * shelves, by at least the radius of its thinnest outline.
 */
final class Leftover {
  /** Left off the thinnest radius, so that slivers of rounding can be dropped, mm. */
  private static final double MARGIN = 0.05;

  private static final double SLIVER = 0.01;

  private Leftover() {}

  /**
   * A polygon that holds every point of another that is not under a shelf.
   *
   * @param from where the axis can be otherwise
   * @param shelves over it
   * @param radius that an outline about the axis has at every height
   */
  static ConvexPolygon of(ConvexPolygon from, List<Region> shelves, double radius) {
    List<ConvexPolygon> left = List.of(from);
    for (Region shelf : shelves) {
      for (ConvexPolygon taken : grown(shelf, radius - MARGIN)) {
        List<ConvexPolygon> next = new ArrayList<>();
        left.forEach(piece -> next.addAll(outside(piece, taken)));
        left = next;
      }
    }
    return left.stream()
        .reduce((a, b) -> a.hullWith(b, Side.EDGE))
        .orElseGet(ConvexPolygon::nowhere);
  }

  /** Polygons inside a shelf grown by a distance: the shelf itself, and moved across each edge. */
  private static List<ConvexPolygon> grown(Region shelf, double distance) {
    ConvexPolygon inside = ConvexPolygon.inside(shelf);
    List<ConvexPolygon> all = new ArrayList<>();
    if (inside.isEmpty()) {
      return all;
    }
    all.add(inside);
    for (Bound bound : shelf.bounds()) {
      if (bound instanceof HalfPlane edge && distance > 0) {
        all.add(inside.moved(edge.nx() * distance, edge.ny() * distance));
      }
    }
    return all;
  }

  /** A convex polygon less another, as convex polygons that may overlap. */
  private static List<ConvexPolygon> outside(ConvexPolygon piece, ConvexPolygon taken) {
    List<ConvexPolygon> left = new ArrayList<>();
    taken.sides(
        (ux, uy, offset) -> {
          if (piece.reach(ux, uy) > offset + SLIVER) {
            ConvexPolygon beyond = piece.cut(-ux, -uy, -offset, Side.EDGE);
            if (!beyond.isEmpty()) {
              left.add(beyond);
            }
          }
        });
    return left;
  }

  /** By how much a polygon of so many tangents must be shrunk to lie inside a round bound. */
  static double sagitta(Bound bound, int tangents) {
    double radius = 0;
    if (bound instanceof DiscBound disc) {
      radius = disc.radius();
    } else if (bound instanceof OvalBound oval) {
      double longer = Math.max(oval.halfLength(), oval.halfWidth());
      double shorter = Math.min(oval.halfLength(), oval.halfWidth());
      radius = longer * longer / shorter;
    }
    double half = Math.PI / tangents;
    return radius * (1 / Math.cos(half) - 1) * 2;
  }
}
