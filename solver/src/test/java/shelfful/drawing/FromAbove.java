package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import shelfful.ware.Band;
import shelfful.ware.Lug;

/**
 * A part of a piece from above as JTS sees it, to judge the setting order with geometry that is not
 * the program's.
 */
record FromAbove(Geometry outline, double from, double to) {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double FAR = 5000;

  /** Square millimetres in common that count as touching, not as standing in the way. */
  private static final double TOUCHING = 1;

  static List<FromAbove> bodies(SetPiece piece) {
    List<FromAbove> parts = new ArrayList<>();
    for (Band band : piece.ware().bands()) {
      Geometry ellipse =
          unitCircle(
              AffineTransformation.scaleInstance(
                      band.outline().width().millimetres() / 2,
                      band.outline().depth().millimetres() / 2)
                  .rotate(piece.placement().turn().radians())
                  .translate(piece.x(), piece.y()));
      parts.add(new FromAbove(ellipse, band.from().millimetres(), band.to().millimetres()));
    }
    return parts;
  }

  static List<FromAbove> all(SetPiece piece) {
    List<FromAbove> parts = new ArrayList<>(bodies(piece));
    for (Lug lug : piece.ware().lugs()) {
      double radius = lug.width().millimetres() / 2;
      double turn = lug.direction().radians() + piece.placement().turn().radians();
      double reach = lug.reach().millimetres() - radius;
      Coordinate axis = new Coordinate(piece.x(), piece.y());
      Coordinate tip =
          new Coordinate(piece.x() + reach * Math.cos(turn), piece.y() + reach * Math.sin(turn));
      Geometry bar = FACTORY.createLineString(new Coordinate[] {axis, tip}).buffer(radius);
      parts.add(new FromAbove(bar, lug.from().millimetres(), lug.to().millimetres()));
    }
    return parts;
  }

  private static Geometry unitCircle(AffineTransformation placed) {
    List<Coordinate> corners = new ArrayList<>();
    for (int degrees = 0; degrees <= 360; degrees += 5) {
      double angle = Math.toRadians(degrees % 360);
      corners.add(new Coordinate(Math.cos(angle), Math.sin(angle)));
    }
    return placed.transform(FACTORY.createPolygon(corners.toArray(new Coordinate[0])));
  }

  /** Whether this stands in the straight lane from the front to the other, at a common height. */
  boolean isInLaneOf(FromAbove other) {
    if (from >= other.to || other.from >= to) {
      return false;
    }
    Geometry moved = AffineTransformation.translationInstance(0, -FAR).transform(other.outline);
    Geometry lane = other.outline.union(moved).convexHull();
    return outline.intersection(lane).getArea() > TOUCHING;
  }

  /** Whether the other, lowered straight down, would meet this. */
  boolean isOver(FromAbove other) {
    return to > other.from && outline.intersection(other.outline).getArea() > TOUCHING;
  }

  static boolean any(List<FromAbove> some, List<FromAbove> others, Meeting meeting) {
    return some.stream().anyMatch(one -> others.stream().anyMatch(two -> meeting.meets(one, two)));
  }

  /** One question about two parts. */
  interface Meeting {
    boolean meets(FromAbove one, FromAbove other);
  }
}
