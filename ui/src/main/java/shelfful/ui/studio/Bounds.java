package shelfful.ui.studio;

import shelfful.measure.Length;

/**
 * Between which sizes a length makes sense, both ends allowed; the same as in a studio's file.
 *
 * @param least smallest
 * @param most largest
 */
record Bounds(Length least, Length most) {
  static final Bounds SIZE = ofMillimetres(1, 3000);
  static final Bounds FROM_ZERO = ofMillimetres(0, 3000);
  static final Bounds CLEARANCE = ofMillimetres(0, 100);
  static final Bounds CATCHER = ofMillimetres(1, 100);
  static final Bounds LAYER = ofMillimetres(0, 1000);
  static final Bounds PLACE = ofMillimetres(-3000, 3000);

  private static Bounds ofMillimetres(double least, double most) {
    return new Bounds(Length.ofMillimetres(least), Length.ofMillimetres(most));
  }

  boolean hold(Length length) {
    return length.compareTo(least) >= 0 && length.compareTo(most) <= 0;
  }
}
