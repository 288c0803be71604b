package shelfful.packing;

import java.util.ArrayList;
import java.util.List;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Pose;
import shelfful.geometry.Shape;

/**
 * Fixed bodies as the proofs see them: obstacles that ask for the least gap which any kind asked
 * about must keep from them, so that a proof never counts more room lost than is.
 */
public final class FixedBodies {
  private FixedBodies() {}

  /**
   * A body that stands fast, as obstacles.
   *
   * @param height up to which it is in the way, from the shelf on, mm
   * @param clearance that others keep from it, its own tolerance included, mm
   */
  public static List<Obstacle> inTheWay(BodyKind kind, Pose pose, double height, double clearance) {
    return kind.parts().stream()
        .map(part -> new Obstacle(standing(part.shape(), pose), 0, height, clearance))
        .toList();
  }

  /** The question's space with every part of every fixed body in the way. */
  static ShelfSpace asObstacles(ShelfQuestion question) {
    if (question.fixed().isEmpty() || question.bodies() == 0) {
      return question.space();
    }
    List<Obstacle> obstacles = new ArrayList<>(question.space().obstacles());
    for (Placed body : question.fixed()) {
      BodyKind kind = question.kinds().get(body.kind());
      double clearance = leastAsked(question, body.kind());
      for (Part part : kind.parts()) {
        Shape there = standing(part.shape(), body.pose());
        obstacles.add(new Obstacle(there, part.from(), part.to(), clearance));
      }
    }
    return new ShelfSpace(question.space().rooms(), obstacles);
  }

  /** The least clearance to a fixed body, its own tolerance included, the other's not. */
  private static double leastAsked(ShelfQuestion question, int fixedKind) {
    double least = Double.POSITIVE_INFINITY;
    for (int kind = 0; kind < question.kinds().size(); kind++) {
      if (question.count(kind) > 0) {
        double other = question.kinds().get(kind).tolerance();
        least = Math.min(least, question.required(kind, fixedKind) - other);
      }
    }
    return Math.max(0, least);
  }

  private static Shape standing(Shape shape, Pose pose) {
    double cos = Math.cos(pose.angle());
    double sin = Math.sin(pose.angle());
    if (shape instanceof Disc disc) {
      double[] centre = moved(disc.x(), disc.y(), pose, cos, sin);
      return new Disc(centre[0], centre[1], disc.radius());
    }
    if (shape instanceof Oval oval) {
      double[] centre = moved(oval.x(), oval.y(), pose, cos, sin);
      double angle = oval.angle() + pose.angle();
      return new Oval(centre[0], centre[1], oval.halfLength(), oval.halfWidth(), angle);
    }
    Capsule bar = (Capsule) shape;
    double[] from = moved(bar.x1(), bar.y1(), pose, cos, sin);
    double[] to = moved(bar.x2(), bar.y2(), pose, cos, sin);
    return new Capsule(from[0], from[1], to[0], to[1], bar.radius());
  }

  private static double[] moved(double x, double y, Pose pose, double cos, double sin) {
    return new double[] {pose.x() + cos * x - sin * y, pose.y() + sin * x + cos * y};
  }
}
