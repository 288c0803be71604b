package shelfful.geometry;

/**
 * The signed gap between outlines, and from an outline to the wall of the region it stands in.
 *
 * <p>The distance when apart; when they overlap, minus the length of the shortest shift that
 * separates them. Exact up to rounding (about 1e-12 of the figures involved) for discs and
 * capsules; for ovals better than 1e-6 mm at pottery sizes, and between bodies never too large.
 */
public final class Gap {
  private Gap() {}

  /** The signed gap between two shapes at their poses, mm. Symmetric in the two. */
  public static double between(Shape a, Pose pa, Shape b, Pose pb) {
    return PairGap.exactly(Contour.of(a, pa), Contour.of(b, pb), new Contact());
  }

  /** The signed gap from a shape inside a region to the nearest of its bounds, mm. */
  public static double inside(Shape s, Pose p, Region r) {
    Contour body = Contour.of(s, p);
    Contact contact = new Contact();
    double least = Double.POSITIVE_INFINITY;
    for (Bound bound : r.bounds()) {
      least = Math.min(least, Wall.of(bound).underLimit(body, Double.POSITIVE_INFINITY, contact));
    }
    return least;
  }
}
