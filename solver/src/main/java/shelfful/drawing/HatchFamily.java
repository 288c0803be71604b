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

  /** A line through a spot, with its direction as a unit step. */
  private record Ray(Spot through, double right, double down) {
    Spot at(double along) {
      return through.plus(right * along, down * along);
    }

    double along(Spot spot) {
      return right * (spot.x() - through.x()) + down * (spot.y() - through.y());
    }

    /** How far a spot lies beside the line. */
    double beside(Spot spot) {
      return -down * (spot.x() - through.x()) + right * (spot.y() - through.y());
    }

    Ray moved(double sideways) {
      return new Ray(through.plus(-down * sideways, right * sideways), right, down);
    }
  }

  /** The strokes inside a convex shape; the middle one goes through the middle of its corners. */
  List<Mark.Hatching.Line> strokes(List<Spot> convex) {
    Ray middle =
        new Ray(middle(convex), Math.cos(Math.toRadians(angle)), -Math.sin(Math.toRadians(angle)));
    double lowest = convex.stream().mapToDouble(middle::beside).min().orElse(0);
    double highest = convex.stream().mapToDouble(middle::beside).max().orElse(0);
    List<Mark.Hatching.Line> strokes = new ArrayList<>();
    int last = (int) Math.floor((highest - INSET) / spacing);
    for (int i = (int) Math.ceil((lowest + INSET) / spacing); i <= last; i++) {
      Ray ray = middle.moved(i * spacing);
      double stagger = Math.floorMod(i, 2) * (on + off) / 2;
      strokes.addAll(cut(ray, within(convex, ray), stagger));
    }
    return strokes;
  }

  private static Spot middle(List<Spot> corners) {
    double x = corners.stream().mapToDouble(Spot::x).average().orElse(0);
    double y = corners.stream().mapToDouble(Spot::y).average().orElse(0);
    return new Spot(x, y);
  }

  /** From where to where a line runs inside a convex shape. */
  private static Reach within(List<Spot> convex, Ray ray) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < convex.size(); i++) {
      Spot here = convex.get(i);
      Spot next = convex.get((i + 1) % convex.size());
      double a = ray.beside(here);
      double b = ray.beside(next);
      if (a <= 0 != b <= 0) {
        double along = ray.along(here.towards(next, a / (a - b)));
        from = Math.min(from, along);
        to = Math.max(to, along);
      }
    }
    return new Reach(from + INSET, to - INSET);
  }

  private List<Mark.Hatching.Line> cut(Ray ray, Reach inside, double stagger) {
    List<Mark.Hatching.Line> strokes = new ArrayList<>();
    if (on == 0) {
      add(strokes, ray, inside);
      return strokes;
    }
    double step = on + off;
    double first = Math.floor((inside.from() - stagger) / step) * step + stagger;
    for (double at = first; at < inside.to(); at += step) {
      double from = Math.max(at - on / 2, inside.from());
      add(strokes, ray, new Reach(from, Math.min(at + on / 2, inside.to())));
    }
    return strokes;
  }

  private static void add(List<Mark.Hatching.Line> strokes, Ray ray, Reach reach) {
    if (reach.length() >= LEAST) {
      strokes.add(new Mark.Hatching.Line(ray.at(reach.from()), ray.at(reach.to())));
    }
  }
}
