package shelfful.bound;

import java.util.ArrayList;
import java.util.List;
import shelfful.measure.Point;

/**
 * What a post makes useless besides itself: the space between it and a rim so near that no disc
 * passes between, or between it and the corner of two such rims at right angles.
 *
 * <p>A disc of radius r, its centre at least t from a straight rim and at least r + p from a post
 * of radius p whose middle is D from that rim, and not farther from the rim than the post's middle,
 * has its centre at least sqrt((r + p)² - (D - t)²) beside the straight line from the post to the
 * rim (Pythagoras). So all discs keep clear of the strip of half width b round that line, b being
 * the least of those distances less r, and no more than p. With two rims at right angles and D less
 * than r + b + t at both, no centre is beyond the post in both directions, and the rectangle from
 * the post to the corner is free of discs too, rounded by b.
 *
 * @param x of the post's middle, mm
 * @param y of the post's middle, mm
 * @param half b, mm
 * @param across extent of the rectangle along the first direction, mm; 0 for the post alone
 * @param along extent along the second, mm; 0 for one rim
 * @param ux the first direction, a unit vector
 * @param uy the first direction
 */
record DeadCorner(
    double x, double y, double half, double across, double along, double ux, double uy) {
  /** A post's middle may be so far from its position, and the judge passes it, mm. */
  static final double POST_OFF = 1;

  private static final double ROUNDING = 1e-9;

  /** A side of a room near a post: outward unit normal and distance of the post's middle, mm. */
  record Near(double ux, double uy, double distance) {}

  /** A post that makes nothing useless but itself. */
  static DeadCorner post(Point at, double radius) {
    return new DeadCorner(at.x().millimetres(), at.y().millimetres(), radius, 0, 0, 1, 0);
  }

  /** What a post spoils towards one or two rims at right angles, or null when discs can pass. */
  static DeadCorner of(Point at, double radius, List<Section> sections, List<Near> rims) {
    double half = radius;
    for (Near rim : rims) {
      half = Math.min(half, halfWidth(radius, sections, rim.distance - POST_OFF));
      half = Math.min(half, halfWidth(radius, sections, rim.distance + POST_OFF));
    }
    if (!(half > 0)) {
      return null;
    }
    double[] extents = new double[2];
    for (int k = 0; k < rims.size(); k++) {
      extents[k] = rims.get(k).distance - POST_OFF - half;
      if (extents[k] < 0 || rims.size() > 1 && passes(sections, rims.get(k).distance, half)) {
        return null;
      }
    }
    Near first = rims.get(0);
    return new DeadCorner(
        at.x().millimetres(),
        at.y().millimetres(),
        half,
        extents[0],
        turned(rims) ? -extents[1] : extents[1],
        first.ux,
        first.uy);
  }

  private static boolean turned(List<Near> rims) {
    return rims.size() > 1 && rims.get(0).ux * rims.get(1).uy - rims.get(0).uy * rims.get(1).ux < 0;
  }

  private static double halfWidth(double radius, List<Section> sections, double distance) {
    double least = Double.POSITIVE_INFINITY;
    for (Section section : sections) {
      double disc = CutRoom.rolling(section);
      double apart = disc + radius;
      double past = distance - inset(section);
      double beside = apart * apart - past * past;
      if (beside <= 0 || distance < 0) {
        return 0;
      }
      least = Math.min(least, Math.sqrt(beside) - disc);
    }
    return least;
  }

  private static boolean passes(List<Section> sections, double distance, double half) {
    return sections.stream()
        .anyMatch(
            section -> distance + POST_OFF >= CutRoom.rolling(section) + half + inset(section));
  }

  /** How far from every rim the centres of the discs stay that make up a section. */
  private static double inset(Section section) {
    double inset = Math.min(section.toWall(), section.toEdge());
    double disc = CutRoom.rolling(section);
    return disc < section.inner() ? Math.min(inset, disc) : inset;
  }

  /** Whether it surely lies apart from another, wherever the posts are within their allowance. */
  boolean isApartFrom(DeadCorner other) {
    double needed = half + other.half + 2 * POST_OFF;
    List<double[]> own = corners();
    List<double[]> theirs = other.corners();
    for (int i = 0; i < own.size(); i++) {
      for (int j = 0; j < theirs.size(); j++) {
        double apart =
            Segments.distance(
                own.get(i), own.get((i + 1) % own.size()),
                theirs.get(j), theirs.get((j + 1) % theirs.size()));
        if (apart < needed) {
          return false;
        }
      }
    }
    return true;
  }

  private List<double[]> corners() {
    List<double[]> corners = new ArrayList<>();
    double vx = -uy * along;
    double vy = ux * along;
    corners.add(new double[] {x, y});
    corners.add(new double[] {x + ux * across, y + uy * across});
    corners.add(new double[] {x + ux * across + vx, y + uy * across + vy});
    corners.add(new double[] {x + vx, y + vy});
    return corners;
  }

  /** Whether it lies in a room, but for rounding. */
  boolean isWithin(ConvexPolygon room) {
    double least = Double.POSITIVE_INFINITY;
    for (double[] corner : corners()) {
      for (ConvexPolygon.Side side : ConvexPolygon.Side.values()) {
        least = Math.min(least, room.depth(corner[0], corner[1], side));
      }
    }
    return least + ROUNDING >= half + POST_OFF;
  }

  /** The area of the rectangle, not rounded. */
  double area() {
    return Math.abs(across * along);
  }

  /** The perimeter of the rectangle, not rounded; a line's counts both ways. */
  double perimeter() {
    return 2 * (Math.abs(across) + Math.abs(along));
  }
}
