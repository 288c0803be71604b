package shelfful.geometry;

/**
 * Where two outlines, or an outline and a wall, come closest: reused working memory of the gap
 * searches, so that an inner loop allocates nothing. Not safe for use by several threads at once.
 */
public final class Contact {
  double gap;
  double ux;
  double uy;
  double armA;
  double armB;

  /** The signed gap found, mm. */
  public double gap() {
    return gap;
  }

  /** The x of the unit direction in which the gap is taken: from a to b, or out through a wall. */
  public double ux() {
    return ux;
  }

  /** The y of that direction. */
  public double uy() {
    return uy;
  }

  /** How fast the support of a in that direction grows as a's body turns, mm per radian. */
  public double armA() {
    return armA;
  }

  /** The same figure of b's support point: the gap grows by it as b's body turns. */
  public double armB() {
    return armB;
  }

  void reset() {
    gap = Double.NEGATIVE_INFINITY;
  }

  void offer(double value, double x, double y) {
    if (value > gap) {
      gap = value;
      ux = x;
      uy = y;
    }
  }
}
