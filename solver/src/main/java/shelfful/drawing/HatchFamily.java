package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Parallel strokes.
 *
 * @param angle of the strokes, in degrees anticlockwise on the paper
 * @param spacing between them, in millimetres of paper
 * @param on length of a stroke; 0 for a full line
 * @param off gap between strokes of one line
 */
record HatchFamily(double angle, double spacing, double on, double off) {
  private static final double INSET = 0.35;
  private static final double DOT = 0.05;
  private static final double LEAST = 0.02;

  static HatchFamily lines(double angle, double spacing) {
    return new HatchFamily(angle, spacing, 0, 0);
  }

  static HatchFamily dots(double angle, double spacing) {
    return new HatchFamily(angle, spacing, DOT, spacing - DOT);
  }

  static HatchFamily dashes(double angle, double spacing) {
    return new HatchFamily(angle, spacing, 1.5, 1.1);
  }

  List<Mark.Hatching.Line> strokes(List<Spot> convex) {
    double right = Math.cos(Math.toRadians(angle));
    double down = -Math.sin(Math.toRadians(angle));
    Spot centre = centre(convex);
    double lowest =
        convex.stream().mapToDouble(corner -> across(corner, centre, right, down)).min().orElse(0);
    double highest =
        convex.stream().mapToDouble(corner -> across(corner, centre, right, down)).max().orElse(0);
    List<Mark.Hatching.Line> strokes = new ArrayList<>();
    int last = (int) Math.floor((highest - INSET) / spacing);
    for (int i = (int) Math.ceil((lowest + INSET) / spacing); i <= last; i++) {
      double offset = i * spacing;
      Spot middle = centre.plus(-down * offset, right * offset);
      double[] within = within(convex, middle, right, down);
      cut(strokes, middle, right, down, within, Math.floorMod(i, 2) * (on + off) / 2);
    }
    return strokes;
  }

  private static Spot centre(List<Spot> corners) {
    double x = corners.stream().mapToDouble(Spot::x).average().orElse(0);
    double y = corners.stream().mapToDouble(Spot::y).average().orElse(0);
    return new Spot(x, y);
  }

  private static double across(Spot corner, Spot centre, double right, double down) {
    return -down * (corner.x() - centre.x()) + right * (corner.y() - centre.y());
  }

  /** From where to where a line through a spot runs inside a convex shape, along its direction. */
  private static double[] within(List<Spot> convex, Spot through, double right, double down) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < convex.size(); i++) {
      Spot here = convex.get(i);
      Spot next = convex.get((i + 1) % convex.size());
      double a = across(here, through, right, down);
      double b = across(next, through, right, down);
      if (a <= 0 != b <= 0) {
        Spot crossing = here.towards(next, a / (a - b));
        double along = right * (crossing.x() - through.x()) + down * (crossing.y() - through.y());
        from = Math.min(from, along);
        to = Math.max(to, along);
      }
    }
    return new double[] {from + INSET, to - INSET};
  }

  private void cut(
      List<Mark.Hatching.Line> strokes,
      Spot middle,
      double right,
      double down,
      double[] within,
      double shift) {
    if (on == 0) {
      add(strokes, middle, right, down, within[0], within[1]);
      return;
    }
    double step = on + off;
    for (double at = Math.floor((within[0] - shift) / step) * step + shift;
        at < within[1];
        at += step) {
      double from = Math.max(at - on / 2, within[0]);
      add(strokes, middle, right, down, from, Math.min(at + on / 2, within[1]));
    }
  }

  private static void add(
      List<Mark.Hatching.Line> strokes,
      Spot middle,
      double right,
      double down,
      double from,
      double to) {
    if (to - from >= LEAST) {
      strokes.add(
          new Mark.Hatching.Line(
              middle.plus(right * from, down * from), middle.plus(right * to, down * to)));
    }
  }
}
