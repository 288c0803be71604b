package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import shelfful.geometry.Bound;
import shelfful.geometry.DiscBound;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.Oval;
import shelfful.geometry.OvalBound;
import shelfful.geometry.Polygons;
import shelfful.geometry.Pose;
import shelfful.geometry.Region;
import shelfful.geometry.Shape;

/**
 * Judges settings without the packer's geometry: outlines become JTS polygons with their corners on
 * the outline, which makes gaps too large by at most {@link #SHARE} of the reach of the outlines.
 */
final class Judge {
  private static final int CORNERS = 240;

  /** Sagitta of one edge, 1 - cos(pi / corners), doubled for two outlines and rounded up. */
  private static final double SHARE = 2e-4;

  private Judge() {}

  /** Fails unless every body asked for stands and every clearance holds. */
  static void accepts(ShelfQuestion question, Packed packed) {
    int[] counts = new int[question.kinds().size()];
    packed.bodies().forEach(body -> counts[body.kind()]++);
    assertThat(counts).isEqualTo(question.counts());
    double slack = SHARE * question.space().rooms().get(0).region().boundingRadius();
    assertThat(spare(question, packed.bodies())).isBetween(-slack, packed.spare() + slack);
  }

  /** The least of gap minus clearance, by polygons. */
  static double spare(ShelfQuestion question, List<Placed> bodies) {
    double least = Double.POSITIVE_INFINITY;
    List<List<Geometry>> drawn = new ArrayList<>();
    for (Placed body : bodies) {
      BodyKind kind = question.kinds().get(body.kind());
      drawn.add(kind.parts().stream().map(part -> polygon(part.shape(), body.pose())).toList());
    }
    for (int i = 0; i < bodies.size(); i++) {
      least = Math.min(least, inRooms(question, bodies.get(i)));
      least = Math.min(least, fromObstacles(question, bodies.get(i), drawn.get(i)));
      for (int j = 0; j < i; j++) {
        BodyKind first = question.kinds().get(bodies.get(i).kind());
        BodyKind second = question.kinds().get(bodies.get(j).kind());
        double gap = between(first, drawn.get(i), second, drawn.get(j));
        double clearance = question.clearance()[bodies.get(i).kind()][bodies.get(j).kind()];
        least = Math.min(least, gap - clearance - first.tolerance() - second.tolerance());
      }
    }
    return least;
  }

  private static double between(
      BodyKind first, List<Geometry> drawn, BodyKind second, List<Geometry> others) {
    double least = Double.POSITIVE_INFINITY;
    for (int a = 0; a < drawn.size(); a++) {
      for (int b = 0; b < others.size(); b++) {
        Part one = first.parts().get(a);
        Part two = second.parts().get(b);
        if (Math.max(one.from(), two.from()) < Math.min(one.to(), two.to())) {
          least = Math.min(least, gap(drawn.get(a), others.get(b)));
        }
      }
    }
    return least;
  }

  private static double gap(Geometry a, Geometry b) {
    return a.intersects(b) ? -Math.sqrt(a.intersection(b).getArea()) : a.distance(b);
  }

  private static double fromObstacles(ShelfQuestion question, Placed body, List<Geometry> drawn) {
    BodyKind kind = question.kinds().get(body.kind());
    double least = Double.POSITIVE_INFINITY;
    for (Obstacle post : question.space().obstacles()) {
      for (int a = 0; a < drawn.size(); a++) {
        Part part = kind.parts().get(a);
        if (Math.max(part.from(), post.from()) < Math.min(part.to(), post.to())) {
          double gap = gap(drawn.get(a), polygon(post.shape(), Pose.HERE));
          least = Math.min(least, gap - post.clearance() - kind.tolerance());
        }
      }
    }
    return least;
  }

  private static double inRooms(ShelfQuestion question, Placed body) {
    BodyKind kind = question.kinds().get(body.kind());
    double least = Double.POSITIVE_INFINITY;
    for (Room room : question.space().rooms()) {
      List<Shape> held =
          room.applies() == Applies.FOOT
              ? List.of(kind.foot())
              : kind.parts().stream().map(Part::shape).toList();
      for (Shape shape : held) {
        double depth = depth(polygon(shape, body.pose()), room.region());
        least = Math.min(least, depth - room.clearance() - kind.tolerance());
      }
    }
    return least;
  }

  private static double depth(Geometry body, Region region) {
    double least = Double.POSITIVE_INFINITY;
    for (Bound bound : region.bounds()) {
      least = Math.min(least, depth(body, bound));
    }
    return least;
  }

  private static double depth(Geometry body, Bound bound) {
    if (bound instanceof OvalBound wall) {
      return depthInOval(body, wall);
    }
    double least = Double.POSITIVE_INFINITY;
    for (Coordinate corner : body.getCoordinates()) {
      least = Math.min(least, depth(corner, bound));
    }
    return least;
  }

  private static double depth(Coordinate corner, Bound bound) {
    if (bound instanceof HalfPlane wall) {
      return wall.offset() - wall.nx() * corner.x - wall.ny() * corner.y;
    }
    DiscBound wall = (DiscBound) bound;
    return wall.radius() - Math.hypot(corner.x - wall.x(), corner.y - wall.y());
  }

  private static double depthInOval(Geometry body, OvalBound wall) {
    Oval outline = new Oval(wall.x(), wall.y(), wall.halfLength(), wall.halfWidth(), wall.angle());
    Geometry inside = Polygons.circumscribed(outline, Pose.HERE, CORNERS);
    if (inside.covers(body)) {
      return inside.getBoundary().distance(body);
    }
    double farthest = 0;
    for (Coordinate corner : body.getCoordinates()) {
      Geometry point = inside.getFactory().createPoint(corner);
      farthest = Math.max(farthest, inside.distance(point));
    }
    return -farthest;
  }

  private static Geometry polygon(Shape shape, Pose pose) {
    return Polygons.inscribed(shape, pose, CORNERS);
  }
}
