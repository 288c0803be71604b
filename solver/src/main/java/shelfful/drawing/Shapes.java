package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.KeepOut;
import shelfful.measure.Angle;
import shelfful.measure.Point;
import shelfful.ware.Lug;
import shelfful.ware.Outline;

/** Ware and keep-outs as shapes on a sheet. */
final class Shapes {
  private static final int STEP = 5;

  private final PlanView view;

  Shapes(PlanView view) {
    this.view = view;
  }

  Mark outline(Outline outline, SetPiece piece, Look look) {
    Spot centre = view.at(piece.placement().at());
    double halfWidth = view.onPaper(outline.width().millimetres() / 2);
    double halfDepth = view.onPaper(outline.depth().millimetres() / 2);
    return outline instanceof Outline.Round
        ? new Mark.Circle(centre, halfWidth, look)
        : new Mark.Oval(centre, halfWidth, halfDepth, piece.placement().turn().degrees(), look);
  }

  Mark lug(Lug lug, SetPiece piece, Look look) {
    double angle = Math.toRadians(lug.direction().degrees() + piece.placement().turn().degrees());
    double width = lug.width().millimetres();
    double reach = lug.reach().millimetres() - width / 2;
    Spot tip = view.at(piece.x() + reach * Math.cos(angle), piece.y() + reach * Math.sin(angle));
    return new Mark.Capsule(view.at(piece.placement().at()), tip, view.onPaper(width), look);
  }

  /** A lug as corners every few degrees. */
  List<Spot> corners(Lug lug, SetPiece piece) {
    double along = lug.direction().degrees() + piece.placement().turn().degrees();
    double radius = lug.width().millimetres() / 2;
    double reach = lug.reach().millimetres() - radius;
    Point tip =
        Point.ofMillimetres(
            piece.x() + reach * Math.cos(Math.toRadians(along)),
            piece.y() + reach * Math.sin(Math.toRadians(along)));
    List<Spot> corners = new ArrayList<>(halfCircle(tip, radius, along - 90));
    corners.addAll(halfCircle(piece.placement().at(), radius, along + 90));
    return corners;
  }

  /** An outline as corners every few degrees, for hatching. */
  List<Spot> corners(Outline outline, SetPiece piece) {
    return corners(outline, piece, STEP);
  }

  /** An outline as corners so many degrees apart. */
  List<Spot> corners(Outline outline, SetPiece piece, int step) {
    double turn = piece.placement().turn().radians();
    List<Spot> corners = new ArrayList<>();
    for (int degrees = 0; degrees < 360; degrees += step) {
      double x = outline.width().millimetres() / 2 * Math.cos(Math.toRadians(degrees));
      double y = outline.depth().millimetres() / 2 * Math.sin(Math.toRadians(degrees));
      corners.add(
          view.at(
              piece.x() + x * Math.cos(turn) - y * Math.sin(turn),
              piece.y() + x * Math.sin(turn) + y * Math.cos(turn)));
    }
    return corners;
  }

  List<Spot> corners(KeepOut keepOut) {
    Point from = keepOut.from();
    Point to = keepOut.to();
    double along =
        Math.toDegrees(
            Math.atan2(to.y().minus(from.y()).millimetres(), to.x().minus(from.x()).millimetres()));
    double radius = keepOut.across().millimetres() / 2;
    List<Spot> corners = new ArrayList<>(halfCircle(to, radius, along - 90));
    corners.addAll(halfCircle(from, radius, along + 90));
    return corners;
  }

  private List<Spot> halfCircle(Point centre, double radius, double start) {
    List<Spot> corners = new ArrayList<>();
    for (int degrees = 0; degrees <= 180; degrees += STEP) {
      double angle = Math.toRadians(start + degrees);
      corners.add(
          view.at(
              centre.x().millimetres() + radius * Math.cos(angle),
              centre.y().millimetres() + radius * Math.sin(angle)));
    }
    return corners;
  }

  /** Whether a box of this size about a piece's axis lies within one of its outlines. */
  boolean holds(Outline outline, Angle turn, double width, double height) {
    double halfWidth = view.onPaper(outline.width().millimetres() / 2) - 0.4;
    double halfDepth = view.onPaper(outline.depth().millimetres() / 2) - 0.4;
    return halfWidth > 0
        && halfDepth > 0
        && isInside(width / 2, height / 2, halfWidth, halfDepth, turn)
        && isInside(width / 2, -height / 2, halfWidth, halfDepth, turn);
  }

  private static boolean isInside(
      double x, double y, double halfWidth, double halfDepth, Angle turn) {
    double cos = Math.cos(turn.radians());
    double sin = Math.sin(turn.radians());
    double u = (x * cos + y * sin) / halfWidth;
    double v = (-x * sin + y * cos) / halfDepth;
    return u * u + v * v <= 1;
  }
}
