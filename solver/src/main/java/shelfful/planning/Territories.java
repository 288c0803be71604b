package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Bound;
import shelfful.geometry.DiscBound;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.OvalBound;
import shelfful.geometry.Region;

/**
 * Straight borders between shelves that lie side by side. What stands on each stays half the widest
 * gap off the border, so the two never need to know of each other.
 */
final class Territories {
  private static final int DIRECTIONS = 720;

  private Territories() {}

  /**
   * The border between two regions in one frame: the line midway in the gap, its normal towards the
   * second. Of all directions the one with the widest gap, edges' own normals among them.
   */
  static HalfPlane border(Region own, Region other) {
    HalfPlane best = null;
    double widest = Double.NEGATIVE_INFINITY;
    for (double direction : directions(own, other)) {
      double nx = Math.cos(direction);
      double ny = Math.sin(direction);
      double ownReach = reach(own, nx, ny);
      double otherStart = -reach(other, -nx, -ny);
      if (otherStart - ownReach > widest) {
        widest = otherStart - ownReach;
        best = new HalfPlane(nx, ny, (ownReach + otherStart) / 2);
      }
    }
    return best;
  }

  private static List<Double> directions(Region own, Region other) {
    List<Double> directions = new ArrayList<>();
    for (Bound bound : own.bounds()) {
      if (bound instanceof HalfPlane wall) {
        directions.add(Math.atan2(wall.ny(), wall.nx()));
      }
    }
    for (Bound bound : other.bounds()) {
      if (bound instanceof HalfPlane wall) {
        directions.add(Math.atan2(-wall.ny(), -wall.nx()));
      }
    }
    for (int i = 0; i < DIRECTIONS; i++) {
      directions.add(2 * Math.PI * i / DIRECTIONS);
    }
    return directions;
  }

  /**
   * An upper bound of how far a region reaches in a direction: the least reach of its bounds, and
   * for straight walls of every corner they make with each other.
   */
  private static double reach(Region region, double nx, double ny) {
    double least = cornerReach(region, nx, ny);
    for (Bound bound : region.bounds()) {
      if (bound instanceof DiscBound disc) {
        least = Math.min(least, nx * disc.x() + ny * disc.y() + disc.radius());
      } else if (bound instanceof OvalBound oval) {
        least = Math.min(least, ovalReach(oval, nx, ny));
      } else if (bound instanceof HalfPlane wall && wall.nx() * nx + wall.ny() * ny > 1 - 1e-12) {
        least = Math.min(least, wall.offset());
      }
    }
    return least;
  }

  private static double ovalReach(OvalBound oval, double nx, double ny) {
    double cos = Math.cos(oval.angle());
    double sin = Math.sin(oval.angle());
    double along = oval.halfLength() * (nx * cos + ny * sin);
    double across = oval.halfWidth() * (ny * cos - nx * sin);
    return nx * oval.x() + ny * oval.y() + Math.hypot(along, across);
  }

  private static double cornerReach(Region region, double nx, double ny) {
    List<HalfPlane> walls =
        region.bounds().stream()
            .filter(HalfPlane.class::isInstance)
            .map(HalfPlane.class::cast)
            .toList();
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < walls.size(); i++) {
      for (int j = i + 1; j < walls.size(); j++) {
        double[] corner = corner(walls.get(i), walls.get(j));
        if (corner != null && isInside(corner, walls)) {
          most = Math.max(most, nx * corner[0] + ny * corner[1]);
        }
      }
    }
    boolean allStraight = walls.size() == region.bounds().size();
    return allStraight ? most : Double.POSITIVE_INFINITY;
  }

  private static double[] corner(HalfPlane a, HalfPlane b) {
    double determinant = a.nx() * b.ny() - a.ny() * b.nx();
    if (Math.abs(determinant) < 1e-9) {
      return null;
    }
    return new double[] {
      (a.offset() * b.ny() - b.offset() * a.ny()) / determinant,
      (a.nx() * b.offset() - b.nx() * a.offset()) / determinant
    };
  }

  private static boolean isInside(double[] point, List<HalfPlane> walls) {
    return walls.stream()
        .allMatch(wall -> wall.nx() * point[0] + wall.ny() * point[1] <= wall.offset() + 1e-6);
  }
}
