package shelfful.ware;

/**
 * Linear shrinkage of a clay body, each figure (before − after) / before × 100 of its own step
 * (ASTM C326). Steps multiply, they do not add: 6.25 % then 6.66 % gives 12.5 %.
 *
 * <p>Leather-hard ware is counted as large as wet ware, glazed ware as large as bisque ware: both
 * are the larger, safe size.
 *
 * @param drying percent lost from wet to bone-dry, 0 up to but not including 30
 * @param bisque percent lost from bone-dry to bisque
 * @param glaze percent lost from bisque to finished
 */
public record Shrinkage(double drying, double bisque, double glaze) {
  public static final Shrinkage NONE = new Shrinkage(0, 0, 0);

  private static final double MOST = 30;

  /** Refuses figures outside 0 to 30 %. */
  public Shrinkage {
    check("drying", drying);
    check("bisque", bisque);
    check("glaze", glaze);
  }

  private static void check(String step, double percent) {
    if (!(percent >= 0 && percent < MOST)) {
      throw new IllegalArgumentException(
          "Shrinkage in " + step + " must be from 0 to 30 percent, not " + percent);
    }
  }

  /** The size at a stage as a share of the wet size. */
  public double shareOfWetAt(Stage stage) {
    double boneDry = 1 - drying / 100;
    double bisqued = boneDry * (1 - bisque / 100);
    return switch (stage) {
      case WET, LEATHER_HARD -> 1;
      case BONE_DRY -> boneDry;
      case BISQUE, GLAZED -> bisqued;
      case FINISHED -> bisqued * (1 - glaze / 100);
    };
  }

  /** What to multiply a size measured at one stage with, to have it at another. */
  public double factor(Stage measured, Stage wanted) {
    return shareOfWetAt(wanted) / shareOfWetAt(measured);
  }
}
