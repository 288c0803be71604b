package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Cuts what reaches out of the part of the chamber that a sheet shows. */
record ViewClip(Box box) {
  /** The parts of a closed outline that lie in the box, as open runs of lines. */
  List<List<Spot>> runs(List<Spot> closed) {
    List<List<Spot>> runs = new ArrayList<>();
    List<Spot> run = new ArrayList<>();
    for (int i = 0; i < closed.size(); i++) {
      Spot here = closed.get(i);
      Spot next = closed.get((i + 1) % closed.size());
      double[] share = visible(here, next);
      if (share[0] >= share[1]) {
        continue;
      }
      Spot from = here.towards(next, share[0]);
      if (run.isEmpty() || run.get(run.size() - 1).distanceTo(from) > 1e-6) {
        run = new ArrayList<>(List.of(from));
        runs.add(run);
      }
      run.add(here.towards(next, share[1]));
    }
    return runs;
  }

  /** Which share of a line lies in the box (Liang and Barsky 1984). */
  private double[] visible(Spot from, Spot to) {
    double[] share = {0, 1};
    double right = to.x() - from.x();
    double down = to.y() - from.y();
    narrow(share, -right, from.x() - box.left());
    narrow(share, right, box.right() - from.x());
    narrow(share, -down, from.y() - box.top());
    narrow(share, down, box.bottom() - from.y());
    return share;
  }

  private static void narrow(double[] share, double step, double room) {
    if (step == 0) {
      share[1] = room < 0 ? -1 : share[1];
    } else if (step < 0) {
      share[0] = Math.max(share[0], room / step);
    } else {
      share[1] = Math.min(share[1], room / step);
    }
  }

  /**
   * The part of a convex shape that lies in the box (Sutherland and Hodgman 1974); empty when there
   * is none.
   */
  List<Spot> convex(List<Spot> corners) {
    List<Spot> left = keep(corners, spot -> spot.x() - box.left());
    List<Spot> right = keep(left, spot -> box.right() - spot.x());
    List<Spot> top = keep(right, spot -> spot.y() - box.top());
    return keep(top, spot -> box.bottom() - spot.y());
  }

  private static List<Spot> keep(List<Spot> corners, ToDoubleFunction<Spot> inside) {
    List<Spot> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Spot here = corners.get(i);
      Spot next = corners.get((i + 1) % corners.size());
      double a = inside.applyAsDouble(here);
      double b = inside.applyAsDouble(next);
      if (a >= 0) {
        kept.add(here);
      }
      if (a >= 0 != b >= 0) {
        kept.add(here.towards(next, a / (a - b)));
      }
    }
    return kept;
  }
}
