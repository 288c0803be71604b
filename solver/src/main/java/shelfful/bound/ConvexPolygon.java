package shelfful.bound;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Bound;
import shelfful.geometry.DiscBound;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.OvalBound;
import shelfful.geometry.Region;

/**
 * A convex polygon in the plan, millimetres, each side of one of two sorts: the chamber's wall or
 * the edge of a shelf. Curved bounds are replaced by tangents, so the polygon holds the region it
 * was made from.
 */
final class ConvexPolygon {
  private static final int TANGENTS = 96;
  private static final double FAR = 1e6;

  /** What a side is of. */
  enum Side {
    WALL,
    EDGE
  }

  private record Corner(double x, double y, Side next) {}

  private List<Corner> corners = new ArrayList<>();

  private ConvexPolygon() {}

  /** A square that holds every kiln. */
  static ConvexPolygon everywhere() {
    ConvexPolygon all = new ConvexPolygon();
    all.corners.add(new Corner(-FAR, -FAR, Side.WALL));
    all.corners.add(new Corner(FAR, -FAR, Side.WALL));
    all.corners.add(new Corner(FAR, FAR, Side.WALL));
    all.corners.add(new Corner(-FAR, FAR, Side.WALL));
    return all;
  }

  /** The empty polygon. */
  static ConvexPolygon nowhere() {
    return new ConvexPolygon();
  }

  /** This cut by a region whose every bound is moved inwards by an inset (outwards if negative). */
  ConvexPolygon within(Region region, double inset, Side side) {
    ConvexPolygon cut = this;
    for (Bound bound : region.bounds()) {
      if (bound instanceof HalfPlane wall) {
        cut = cut.cut(wall.nx(), wall.ny(), wall.offset() - inset, side);
      } else {
        for (int i = 0; i < TANGENTS; i++) {
          double angle = 2 * Math.PI * i / TANGENTS;
          double ux = Math.cos(angle);
          double uy = Math.sin(angle);
          cut = cut.cut(ux, uy, reach(bound, ux, uy) - inset, side);
        }
      }
    }
    return cut;
  }

  /** A polygon inside a region. */
  static ConvexPolygon inside(Region region) {
    double inset = 0;
    for (Bound bound : region.bounds()) {
      inset = Math.max(inset, Leftover.sagitta(bound, TANGENTS));
    }
    return everywhere().within(region, inset, Side.EDGE);
  }

  ConvexPolygon moved(double dx, double dy) {
    ConvexPolygon there = new ConvexPolygon();
    for (Corner corner : corners) {
      there.corners.add(new Corner(corner.x + dx, corner.y + dy, corner.next));
    }
    return there;
  }

  /** Takes each side's outward unit normal and its reach in that direction. */
  interface SideVisitor {
    void side(double ux, double uy, double offset);
  }

  void sides(SideVisitor visitor) {
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      double length = Math.hypot(to.x - from.x, to.y - from.y);
      if (length > 0) {
        double ux = (to.y - from.y) / length;
        double uy = (from.x - to.x) / length;
        visitor.side(ux, uy, ux * from.x + uy * from.y);
      }
    }
  }

  /** This cut by the tangents of a fan of directions to another polygon grown by a distance. */
  ConvexPolygon near(ConvexPolygon other, double distance) {
    ConvexPolygon cut = this;
    for (int i = 0; i < TANGENTS; i++) {
      double angle = 2 * Math.PI * i / TANGENTS;
      double ux = Math.cos(angle);
      double uy = Math.sin(angle);
      cut = cut.cut(ux, uy, other.reach(ux, uy) + distance, Side.EDGE);
    }
    return cut;
  }

  private static double reach(Bound bound, double ux, double uy) {
    if (bound instanceof DiscBound disc) {
      return disc.x() * ux + disc.y() * uy + disc.radius();
    }
    OvalBound oval = (OvalBound) bound;
    double cos = Math.cos(oval.angle());
    double sin = Math.sin(oval.angle());
    double along = oval.halfLength() * (ux * cos + uy * sin);
    double across = oval.halfWidth() * (uy * cos - ux * sin);
    return oval.x() * ux + oval.y() * uy + Math.hypot(along, across);
  }

  /** Keeps the points p with u.p at most the offset; {@code u} is a unit vector. */
  ConvexPolygon cut(double ux, double uy, double offset, Side side) {
    ConvexPolygon kept = new ConvexPolygon();
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      double before = ux * from.x + uy * from.y - offset;
      double after = ux * to.x + uy * to.y - offset;
      if (before <= 0) {
        kept.corners.add(from);
      }
      if (before <= 0 != after <= 0) {
        double share = before / (before - after);
        double x = from.x + share * (to.x - from.x);
        double y = from.y + share * (to.y - from.y);
        kept.corners.add(new Corner(x, y, before <= 0 ? side : from.next));
      }
    }
    return kept;
  }

  /** A polygon that holds both, cut along the tangents of a fan of directions. */
  ConvexPolygon hullWith(ConvexPolygon other, Side side) {
    if (isEmpty()) {
      return other;
    }
    if (other.isEmpty()) {
      return this;
    }
    ConvexPolygon hull = everywhere();
    for (int i = 0; i < TANGENTS; i++) {
      double angle = 2 * Math.PI * i / TANGENTS;
      double ux = Math.cos(angle);
      double uy = Math.sin(angle);
      hull = hull.cut(ux, uy, Math.max(reach(ux, uy), other.reach(ux, uy)), side);
    }
    return hull;
  }

  /** The corners' coordinates, x and y in turn. */
  double[] coordinates() {
    double[] all = new double[2 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      all[2 * i] = corners.get(i).x;
      all[2 * i + 1] = corners.get(i).y;
    }
    return all;
  }

  boolean isEmpty() {
    return corners.size() < 3;
  }

  /** How far the polygon reaches in a direction. */
  double reach(double ux, double uy) {
    double most = Double.NEGATIVE_INFINITY;
    for (Corner corner : corners) {
      most = Math.max(most, ux * corner.x + uy * corner.y);
    }
    return most;
  }

  /** The distance of the farthest corner from a point. */
  double farthestFrom(double x, double y) {
    double most = 0;
    for (Corner corner : corners) {
      most = Math.max(most, Math.hypot(corner.x - x, corner.y - y));
    }
    return most;
  }

  double area() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      twice += from.x * to.y - to.x * from.y;
    }
    return twice / 2;
  }

  /** The length of all sides of a sort. */
  double length(Side side) {
    double length = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      length += from.next == side ? Math.hypot(to.x - from.x, to.y - from.y) : 0;
    }
    return length;
  }

  /**
   * The least distance of any point of another polygon inside this one from a side of a sort;
   * infinite when there is no such side.
   */
  double leastDepth(ConvexPolygon inner, Side side) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      double length = Math.hypot(to.x - from.x, to.y - from.y);
      if (from.next == side && length > 0) {
        double ux = (to.y - from.y) / length;
        double uy = (from.x - to.x) / length;
        least = Math.min(least, ux * from.x + uy * from.y - inner.reach(ux, uy));
      }
    }
    return least;
  }

  /** How far inside this polygon a point lies; negative outside. */
  double depth(double x, double y, Side side) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      double length = Math.hypot(to.x - from.x, to.y - from.y);
      if (from.next == side && length > 0) {
        double ux = (to.y - from.y) / length;
        double uy = (from.x - to.x) / length;
        least = Math.min(least, ux * (from.x - x) + uy * (from.y - y));
      }
    }
    return least;
  }
}
