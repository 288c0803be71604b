package shelfful.geometry;

/**
 * The one place where small numbers live. Everything else that compares lengths or angles asks
 * here, so that no two parts of the program disagree on what "touching" means.
 */
public final class Tolerance {
  /** Lengths in millimetres below this are treated as none when a direction is needed. */
  public static final double NO_LENGTH = 1e-12;

  /** Rotation in radians at which a search for the best direction stops; its error is squared. */
  public static final double DIRECTION = 1e-9;

  /** Relative change at which a search for a root stops. */
  public static final double ROOT = 1e-14;

  /**
   * Share of the room's size by which a layout aims beyond its clearances, so that the exact check
   * afterwards passes in spite of rounding. Far under what a hand or a ruler can see: 0.03 µm on a
   * 600 mm shelf.
   */
  public static final double AIM_BEYOND = 5e-8;

  /** Sufficient-decrease share of a line search (the usual value, Nocedal and Wright 2006). */
  public static final double SUFFICIENT_DECREASE = 1e-4;

  /** Curvature under which a quasi-Newton pair is not trusted, as a share of |s||y|. */
  public static final double LEAST_CURVATURE = 1e-10;

  /** Relative fall of a layout energy over ten steps under which it counts as settled. */
  public static final double SETTLED = 2e-3;

  /** Share of the proven limit by which a claim "cannot fit" must be exceeded before it is made. */
  public static final double PROOF_SLACK = 1e-9;

  private Tolerance() {}

  /**
   * Whether a value exceeds a proven limit clearly enough to refuse, rounding included. Leans
   * towards "may fit".
   */
  public static boolean clearlyExceeds(double value, double limit) {
    return value > limit + PROOF_SLACK * Math.max(1, Math.abs(limit));
  }
}
