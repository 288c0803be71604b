package shelfful.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shelfful.measure.Point;
import shelfful.ware.Band;
import shelfful.ware.Lug;
import shelfful.ware.Outline;

/**
 * A part of a standing piece between two heights, seen from above: a convex outline in the chamber
 * frame. Round things become corners on their edge, so a slice never covers more than the ware.
 *
 * @param corners anticlockwise
 * @param from its lower height over the shelf, in millimetres
 * @param to its upper height over the shelf, in millimetres
 * @param across what it covers from left to right, in millimetres
 */
record Slice(List<Point> corners, double from, double to, Reach across) {
  /** Degrees between two corners: a wide bowl loses a tenth of a millimetre between them. */
  private static final int STEP = 5;

  private static Slice of(List<Point> corners, double from, double to) {
    return new Slice(List.copyOf(corners), from, to, Reach.alongX(corners));
  }

  /** The bands of a piece, its catcher included. */
  static List<Slice> bands(SetPiece piece) {
    return piece.ware().bands().stream().map(band -> band(piece, band)).toList();
  }

  /** The widest of its bands. */
  static Slice widest(SetPiece piece) {
    return bands(piece).stream()
        .max(Comparator.comparingDouble((Slice band) -> band.across().length()))
        .orElseThrow();
  }

  /** Its handles, spouts and whatever else sticks out. */
  static List<Slice> lugs(SetPiece piece) {
    return piece.ware().lugs().stream().map(lug -> lug(piece, lug)).toList();
  }

  private static Slice band(SetPiece piece, Band band) {
    Outline outline = band.outline();
    double halfWidth = outline.width().millimetres() / 2;
    double halfDepth = outline.depth().millimetres() / 2;
    double turn = piece.placement().turn().radians();
    List<Point> corners = new ArrayList<>();
    for (int degrees = 0; degrees < 360; degrees += STEP) {
      double x = halfWidth * Math.cos(Math.toRadians(degrees));
      double y = halfDepth * Math.sin(Math.toRadians(degrees));
      corners.add(
          Point.ofMillimetres(
              piece.x() + x * Math.cos(turn) - y * Math.sin(turn),
              piece.y() + x * Math.sin(turn) + y * Math.cos(turn)));
    }
    return of(corners, band.from().millimetres(), band.to().millimetres());
  }

  private static Slice lug(SetPiece piece, Lug lug) {
    double radius = lug.width().millimetres() / 2;
    double reach = lug.reach().millimetres() - radius;
    double along = piece.placement().turn().degrees() + lug.direction().degrees();
    double x = piece.x() + reach * Math.cos(Math.toRadians(along));
    double y = piece.y() + reach * Math.sin(Math.toRadians(along));
    List<Point> corners = new ArrayList<>(halfCircle(x, y, radius, along - 90));
    corners.addAll(halfCircle(piece.x(), piece.y(), radius, along + 90));
    return of(corners, lug.from().millimetres(), lug.to().millimetres());
  }

  private static List<Point> halfCircle(double x, double y, double radius, double start) {
    List<Point> corners = new ArrayList<>();
    for (int degrees = 0; degrees <= 180; degrees += STEP) {
      double angle = Math.toRadians(start + degrees);
      corners.add(Point.ofMillimetres(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
    }
    return corners;
  }

  /** Whether both have a height in common. */
  boolean sharesHeightWith(Slice other) {
    return from < other.to && other.from < to;
  }

  /**
   * Whether this stands in the straight lane from the front edge to the other, at a height both
   * have. Of two convex outlines that do not touch, one lies wholly in front of the other wherever
   * both are met from left to right, so one place decides.
   */
  boolean isInFrontOf(Slice other) {
    double left = Math.max(across.from(), other.across.from());
    double right = Math.min(across.to(), other.across.to());
    if (left >= right || !sharesHeightWith(other)) {
      return false;
    }
    double at = (left + right) / 2;
    return middleAt(at) < other.middleAt(at);
  }

  /** Whether this lies over some of the other, so that the other cannot be lowered past it. */
  boolean isOver(Slice other) {
    return to > other.from
        && across.shared(other.across) > 0
        && Contact.overlap(corners, other.corners);
  }

  /** The middle of the depth it has at a place from left to right, in millimetres. */
  private double middleAt(double x) {
    double nearest = Double.POSITIVE_INFINITY;
    double farthest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Point here = corners.get(i);
      Point next = corners.get((i + 1) % corners.size());
      double before = x - here.x().millimetres();
      double after = x - next.x().millimetres();
      if (before * after <= 0 && before != after) {
        double share = before / (before - after);
        double y = here.y().millimetres() * (1 - share) + next.y().millimetres() * share;
        nearest = Math.min(nearest, y);
        farthest = Math.max(farthest, y);
      }
    }
    return (nearest + farthest) / 2;
  }
}
