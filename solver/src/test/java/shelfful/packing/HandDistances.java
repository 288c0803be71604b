package shelfful.packing;

import java.util.List;

/** How near two kinds may surely not stand, and how far apart they surely may. Millimetres. */
public final class HandDistances {
  private final double[][] least;
  private final double[][] most;

  /**
   * Of some kinds.
   *
   * @param clearance between each two of them, tolerances not included
   */
  public HandDistances(List<BodyKind> kinds, double[][] clearance) {
    int count = kinds.size();
    least = new double[count][count];
    most = new double[count][count];
    for (int a = 0; a < count; a++) {
      for (int b = 0; b < count; b++) {
        BodyKind one = kinds.get(a);
        BodyKind other = kinds.get(b);
        double gap = clearance[a][b] + one.tolerance() + other.tolerance();
        least[a][b] = inner(one, other, gap);
        most[a][b] = one.reach() + other.reach() + gap;
      }
    }
  }

  /** Centres nearer than this are too near: the discs inside their parts would be. */
  double least(int a, int b) {
    return least[a][b];
  }

  /** Centres further apart than this are far enough, however the pieces are turned. */
  double most(int a, int b) {
    return most[a][b];
  }

  private static double inner(BodyKind a, BodyKind b, double gap) {
    double least = 0;
    for (Part one : a.parts()) {
      for (Part other : b.parts()) {
        if (isCentred(one) && isCentred(other) && one.sharesHeightWith(other.from(), other.to())) {
          double radii = one.shape().innerRadius() + other.shape().innerRadius();
          least = Math.max(least, radii + gap);
        }
      }
    }
    return least;
  }

  private static boolean isCentred(Part part) {
    return part.shape().centreX() == 0 && part.shape().centreY() == 0;
  }
}
