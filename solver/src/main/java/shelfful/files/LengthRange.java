package shelfful.files;

import shelfful.measure.Length;
import shelfful.measure.TextReading;

/**
 * Between which sizes a length in a file makes sense; both ends are allowed. A size outside is a
 * slip of the unit or the decimal sign.
 *
 * @param least smallest
 * @param most largest
 */
record LengthRange(Length least, Length most) {
  /** Whatever has a size: 1 mm to 3 m. */
  static final LengthRange SIZE = ofMillimetres(1, 3000);

  /** A height to start from, or a saw cut, that may be nothing. */
  static final LengthRange FROM_ZERO = ofMillimetres(0, 3000);

  /** A clearance, margin or tolerance. */
  static final LengthRange CLEARANCE = ofMillimetres(0, 100);

  /** A place in the chamber frame. */
  static final LengthRange PLACE = ofMillimetres(-3000, 3000);

  static LengthRange ofMillimetres(double least, double most) {
    return new LengthRange(Length.ofMillimetres(least), Length.ofMillimetres(most));
  }

  TextReading<Length> check(Length length) {
    if (length.compareTo(least) < 0 || length.isLongerThan(most)) {
      return new TextReading.Refused<>(
          FileNumber.written(length) + " mm is out of range.",
          "It must be from "
              + FileNumber.written(least)
              + " to "
              + FileNumber.written(most)
              + " mm; check the unit and the decimal sign.");
    }
    return new TextReading.Understood<>(length);
  }
}
