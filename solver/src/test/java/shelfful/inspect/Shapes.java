package shelfful.inspect;

import java.util.Random;
import java.util.function.DoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Random footprints in micrometres, and the same outlines as polygons of a geometry library. */
final class Shapes {
  /** Corners of a polygon that stands for something round. */
  static final int CORNERS = 120;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Shapes() {}

  static Ellipse ellipse(Random random) {
    return new Ellipse(
        spot(random, 200_000),
        10_000 + random.nextInt(140_000),
        10_000 + random.nextInt(140_000),
        Vector.towards(random.nextInt(360_000)));
  }

  static Disc disc(Random random) {
    Vector at = spot(random, 200_000);
    return new Disc((long) at.x(), (long) at.y(), 20_000 + random.nextInt(180_000));
  }

  static Bar bar(Random random) {
    Vector from = spot(random, 200_000);
    Vector along = Vector.towards(random.nextInt(360_000)).times(random.nextInt(90_000));
    return new Bar(from, from.plus(along), 2_000 + random.nextInt(20_000));
  }

  static Vector spot(Random random, int within) {
    return new Vector(random.nextInt(2 * within) - within, random.nextInt(2 * within) - within);
  }

  /** A polygon with its corners on the outline of the ellipse. */
  static Geometry inside(Ellipse ellipse) {
    return polygon(ellipse, 1);
  }

  /** A polygon with its sides touching the ellipse. */
  static Geometry around(Ellipse ellipse) {
    return polygon(ellipse, 1 / Math.cos(Math.PI / CORNERS));
  }

  private static Geometry polygon(Ellipse ellipse, double scale) {
    Vector across = ellipse.axis().quarterTurned();
    return ring(
        CORNERS,
        angle ->
            ellipse
                .middle()
                .plus(ellipse.axis().times(scale * ellipse.halfWidth() * Math.cos(angle)))
                .plus(across.times(scale * ellipse.halfDepth() * Math.sin(angle))));
  }

  static Geometry inside(Disc disc) {
    return inside(asEllipse(disc));
  }

  static Geometry around(Disc disc) {
    return around(asEllipse(disc));
  }

  static Ellipse asEllipse(Disc disc) {
    return new Ellipse(disc.middle(), disc.radius(), disc.radius(), new Vector(1, 0));
  }

  /** A closed polygon of points at equal angles. */
  static Geometry ring(int corners, DoubleFunction<Vector> at) {
    Coordinate[] coordinates = new Coordinate[corners + 1];
    for (int i = 0; i < corners; i++) {
      Vector point = at.apply(2 * Math.PI * i / corners);
      coordinates[i] = new Coordinate(point.x(), point.y());
    }
    coordinates[corners] = coordinates[0];
    return FACTORY.createPolygon(coordinates);
  }

  static Geometry line(Bar bar) {
    return FACTORY.createLineString(
        new Coordinate[] {coordinate(bar.from()), coordinate(bar.to())});
  }

  static Geometry point(Vector vector) {
    return FACTORY.createPoint(coordinate(vector));
  }

  private static Coordinate coordinate(Vector vector) {
    return new Coordinate(vector.x(), vector.y());
  }

  /** Half of a disc as a polygon with corners on its outline. */
  static Geometry halfDisc(double radius, double cut, int corners) {
    Geometry disc =
        ring(corners, angle -> new Vector(radius * Math.cos(angle), radius * Math.sin(angle)));
    return disc.intersection(box(-2 * radius, cut, 2 * radius, 2 * radius));
  }

  static Geometry box(double left, double bottom, double right, double top) {
    return FACTORY.createPolygon(
        new Coordinate[] {
          new Coordinate(left, bottom),
          new Coordinate(right, bottom),
          new Coordinate(right, top),
          new Coordinate(left, top),
          new Coordinate(left, bottom)
        });
  }
}
