package shelfful.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Outlines as JTS polygons, one inside the outline and one round it, so that the true figure lies
 * between those of the two. Made from boundary points alone, without support functions.
 */
public final class Polygons {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Polygons() {}

  /** A polygon with its corners on the outline: inside it. */
  public static Geometry inscribed(Shape shape, Pose pose, int corners) {
    return polygon(shape, pose, corners, 1);
  }

  /** A polygon that holds the outline: each arc's corners moved out until the edges touch it. */
  public static Geometry circumscribed(Shape shape, Pose pose, int corners) {
    return polygon(shape, pose, corners, 1 / Math.cos(Math.PI / corners));
  }

  private static Geometry polygon(Shape shape, Pose pose, int corners, double stretch) {
    List<Coordinate> points = new ArrayList<>();
    if (shape instanceof Capsule capsule) {
      ring(points, new double[] {capsule.x1(), capsule.y1()}, capsule.radius() * stretch, corners);
      ring(points, new double[] {capsule.x2(), capsule.y2()}, capsule.radius() * stretch, corners);
    } else if (shape instanceof Disc disc) {
      ring(points, new double[] {disc.x(), disc.y()}, disc.radius() * stretch, corners);
    } else {
      Oval oval = (Oval) shape;
      for (int i = 0; i < corners; i++) {
        double t = 2 * Math.PI * i / corners;
        double along = stretch * oval.halfLength() * Math.cos(t);
        double across = stretch * oval.halfWidth() * Math.sin(t);
        double cos = Math.cos(oval.angle());
        double sin = Math.sin(oval.angle());
        points.add(
            new Coordinate(
                oval.x() + along * cos - across * sin, oval.y() + along * sin + across * cos));
      }
    }
    double cos = Math.cos(pose.angle());
    double sin = Math.sin(pose.angle());
    Coordinate[] placed =
        points.stream()
            .map(
                p ->
                    new Coordinate(
                        pose.x() + cos * p.x - sin * p.y, pose.y() + sin * p.x + cos * p.y))
            .toArray(Coordinate[]::new);
    return FACTORY.createMultiPointFromCoords(placed).convexHull();
  }

  private static void ring(List<Coordinate> points, double[] centre, double radius, int corners) {
    for (int i = 0; i < corners; i++) {
      double t = 2 * Math.PI * i / corners;
      points.add(
          new Coordinate(centre[0] + radius * Math.cos(t), centre[1] + radius * Math.sin(t)));
    }
  }
}
