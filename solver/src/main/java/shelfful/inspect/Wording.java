package shelfful.inspect;

import java.util.List;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;

/** Figures in sentences, in the unit that people of the studio read. */
record Wording(LengthUnit unit) {
  private static final int MOST_NAMES = 6;

  /** A length in micrometres. */
  String length(long micrometres) {
    return LengthText.write(new Length(micrometres), unit);
  }

  /** What was measured and what is needed, told apart even when both round to the same figure. */
  String butNeeds(long measured, long required) {
    String has = length(measured);
    String needs = length(required);
    return has.equals(needs)
        ? "a hair under the " + needs + " needed"
        : has + ", but " + needs + " is needed";
  }

  /** Two lengths that should be one, told apart even when both round to the same figure. */
  String butIs(long one, long other) {
    String first = length(one);
    String second = length(other);
    return first.equals(second) ? "a hair off " + second : first + " and not " + second;
  }

  /** How far too short, at least the finest step people read. */
  String missing(long measured, long required) {
    long step = unit == LengthUnit.INCHES ? 1588 : 100;
    return length(Math.max(step, -Math.floorDiv(measured - required, step) * step));
  }

  static String mass(Mass mass) {
    return mass.kilograms() + " kg";
  }

  /** Names in a row, with a count when there are many. */
  static String names(List<String> names) {
    if (names.size() <= MOST_NAMES) {
      return String.join(", ", names);
    }
    int more = names.size() - MOST_NAMES;
    return String.join(", ", names.subList(0, MOST_NAMES)) + " and " + more + " more";
  }
}
