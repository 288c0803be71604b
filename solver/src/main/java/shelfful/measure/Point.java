package shelfful.measure;

/**
 * A place in the plan. Unless said otherwise the frame is the chamber's: origin at the centre of
 * the chamber floor, x to the right, y away from the person loading.
 *
 * @param x to the right
 * @param y away from the loader
 */
public record Point(Length x, Length y) {
  public static final Point ORIGIN = new Point(Length.ZERO, Length.ZERO);

  public static Point ofMillimetres(double x, double y) {
    return new Point(Length.ofMillimetres(x), Length.ofMillimetres(y));
  }
}
