package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * Light lines on a shelf by which the eye finds a place without a ruler: on a rectangle a net from
 * its left and front edges, on anything round the twelve hours of a clock and rings about the
 * centre, 50 mm or 2 in apart. The figures of the key are read off the same lines.
 */
final class PlaceGrid {
  private static final Pen LIGHT = Pen.solid(0.12, Ink.grey(190));
  private static final double RING_STEP = Math.toRadians(3);
  private static final int HOURS = 12;
  private static final double LETTER = 2.9;

  private final SheetDraft sheet;
  private final PlanView view;
  private final List<Point> contour;
  private final ShelfPositions positions;
  private final double pitch;
  private final Box shown;

  /**
   * @param shown what of the sheet shows the kiln; the figures of a net stand outside it
   */
  PlaceGrid(
      SheetDraft sheet, PlanView view, List<Point> contour, ShelfPositions positions, Box shown) {
    this.sheet = sheet;
    this.view = view;
    this.contour = contour;
    this.positions = positions;
    this.shown = shown;
    this.pitch = positions.pitch().millimetres();
  }

  void lines() {
    if (positions.fromEdges()) {
      net();
    } else {
      rays();
      rings();
    }
  }

  private void net() {
    Reach across = Reach.alongX(contour);
    Reach deep = Reach.alongY(contour);
    for (double x = across.from() + pitch; x < across.to(); x += pitch) {
      Spot near = view.at(x, deep.from());
      sheet.line(near, new Spot(near.x(), shown.top()), LIGHT);
    }
    for (double y = deep.from() + pitch; y < deep.to(); y += pitch) {
      Spot right = view.at(across.to(), y);
      sheet.line(new Spot(shown.left(), right.y()), right, LIGHT);
    }
  }

  private void rays() {
    for (int hour = 1; hour <= HOURS; hour++) {
      double edge = edge(hour);
      if (edge > pitch) {
        sheet.line(out(hour, pitch), out(hour, edge), LIGHT);
      }
    }
  }

  private void rings() {
    double farthest = farthest();
    for (double radius = pitch; radius < farthest; radius += pitch) {
      ring(radius).forEach(this::run);
    }
  }

  private void run(List<Spot> run) {
    if (run.size() > 1) {
      sheet.add(new Mark.Path(run, false, Look.outlined(LIGHT)));
    }
  }

  /** The parts of a ring that lie on the shelf. */
  private List<List<Spot>> ring(double radius) {
    List<List<Spot>> runs = new ArrayList<>();
    List<Spot> run = new ArrayList<>();
    double x = positions.centre().x().millimetres();
    double y = positions.centre().y().millimetres();
    int steps = (int) Math.round(2 * Math.PI / RING_STEP);
    for (int i = 0; i <= steps; i++) {
      double px = x + radius * Math.cos(i * RING_STEP);
      double py = y + radius * Math.sin(i * RING_STEP);
      if (Contact.isOver(contour, Point.ofMillimetres(px, py), 0)) {
        run.add(view.at(px, py));
      } else if (!run.isEmpty()) {
        runs.add(run);
        run = new ArrayList<>();
      }
    }
    runs.add(run);
    return runs;
  }

  private double farthest() {
    double x = positions.centre().x().millimetres();
    double y = positions.centre().y().millimetres();
    return contour.stream()
        .mapToDouble(
            corner -> Math.hypot(corner.x().millimetres() - x, corner.y().millimetres() - y))
        .max()
        .orElse(0);
  }

  /** How far from the centre the shelf's edge lies towards an hour; 0 where it has none. */
  private double edge(int hour) {
    double angle = angle(hour);
    double x = positions.centre().x().millimetres();
    double y = positions.centre().y().millimetres();
    double reach = 0;
    for (int i = 0; i < contour.size(); i++) {
      Point here = contour.get(i);
      Point next = contour.get((i + 1) % contour.size());
      double a = beside(here, x, y, angle);
      double b = beside(next, x, y, angle);
      if (a <= 0 != b <= 0) {
        double share = a / (a - b);
        double along = along(here, x, y, angle);
        reach = Math.max(reach, along + share * (along(next, x, y, angle) - along));
      }
    }
    return reach;
  }

  private static double angle(int hour) {
    return Math.PI / 2 - 2 * Math.PI * hour / HOURS;
  }

  private static double along(Point at, double x, double y, double angle) {
    return (at.x().millimetres() - x) * Math.cos(angle)
        + (at.y().millimetres() - y) * Math.sin(angle);
  }

  private static double beside(Point at, double x, double y, double angle) {
    return (at.y().millimetres() - y) * Math.cos(angle)
        - (at.x().millimetres() - x) * Math.sin(angle);
  }

  private Spot out(int hour, double distance) {
    double x = positions.centre().x().millimetres();
    double y = positions.centre().y().millimetres();
    double angle = angle(hour);
    return view.at(x + distance * Math.cos(angle), y + distance * Math.sin(angle));
  }

  /** The hours round a round shelf, or the distances along a rectangle's far and left edges. */
  void figures(List<Box> taken) {
    if (positions.fromEdges()) {
      distances();
    } else {
      hours(taken);
    }
  }

  private void hours(List<Box> taken) {
    for (int hour = 1; hour <= HOURS; hour++) {
      double edge = edge(hour);
      String told = Integer.toString(hour);
      double width = TextStyle.QUIET.wording().width(told);
      Spot middle = out(hour, edge + (0.6 + LETTER / 2 + width / 4) * view.ratio());
      Box box =
          new Box(
              middle.x() - width / 2,
              middle.y() - LETTER / 2,
              middle.x() + width / 2,
              middle.y() + LETTER / 2);
      if (edge > pitch && taken.stream().noneMatch(box::overlaps) && sheet.isFree(box)) {
        sheet.text(middle.plus(0, 1.05), told, TextStyle.QUIET, Anchor.MIDDLE, width + 1);
      }
    }
  }

  private void distances() {
    Reach across = Reach.alongX(contour);
    Reach deep = Reach.alongY(contour);
    for (int i = 1; i * pitch < across.length(); i++) {
      Spot at = view.at(across.from() + i * pitch, 0);
      figure(i, new Spot(at.x(), shown.top() - 1), Anchor.MIDDLE);
    }
    for (int i = 1; i * pitch < deep.length(); i++) {
      Spot at = view.at(0, deep.from() + i * pitch);
      figure(i, new Spot(shown.left() - 1.2, at.y() + 1), Anchor.END);
    }
  }

  private void figure(int count, Spot at, Anchor anchor) {
    String told = positions.bare(Length.ofMillimetres(count * pitch));
    double width = TextStyle.QUIET.wording().width(told);
    double left = at.x() - (anchor == Anchor.END ? width : width / 2);
    if (sheet.isFree(new Box(left - 0.8, at.y() - LETTER, left + width + 0.8, at.y() + 0.8))) {
      sheet.text(at, told, TextStyle.QUIET, anchor, width + 1);
    }
  }
}
