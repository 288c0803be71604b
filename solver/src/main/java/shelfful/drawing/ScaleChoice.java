package shelfful.drawing;

/** Scales people know from drawings: 1 : n with a plain n. */
final class ScaleChoice {
  private static final double[] RATIOS = {
    1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18,
    20, 25
  };

  private ScaleChoice() {}

  /** The largest scale at which a thing of this size fits, all in millimetres. */
  static double toFit(double width, double height, double widthThere, double heightThere) {
    double least = Math.max(width / widthThere, height / heightThere);
    for (double ratio : RATIOS) {
      if (ratio >= least) {
        return ratio;
      }
    }
    return Math.ceil(least / 10) * 10;
  }

  /** {@code 1 : 4} or {@code 1 : 2.5}. */
  static String words(double ratio) {
    boolean whole = ratio == Math.rint(ratio);
    return "1 : " + (whole ? Long.toString((long) ratio) : Double.toString(ratio));
  }
}
