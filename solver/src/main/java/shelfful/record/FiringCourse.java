package shelfful.record;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a firing really went, as far as it was noted.
 *
 * @param program the controller's program, in the potter's words
 * @param cones what the witness cones say, place by place; may be empty
 * @param minutesUp from switching on to the end of the last hold
 * @param minutesDown from there to opening
 * @param meterStart the meter's reading before, in watt-hours
 * @param meterEnd the meter's reading after, in watt-hours
 */
public record FiringCourse(
    Optional<String> program,
    List<WitnessCone> cones,
    Optional<Integer> minutesUp,
    Optional<Integer> minutesDown,
    Optional<Long> meterStart,
    Optional<Long> meterEnd) {
  /** Nothing noted yet. */
  public static final FiringCourse UNKNOWN =
      new FiringCourse(
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** Takes its own copy; refuses times below 0 and a meter that runs backwards. */
  public FiringCourse {
    cones = List.copyOf(cones);
    if (minutesUp.orElse(0) < 0 || minutesDown.orElse(0) < 0) {
      throw new IllegalArgumentException("A firing cannot last less than no time");
    }
    if (meterStart.isPresent() && meterEnd.isPresent() && meterEnd.get() < meterStart.get()) {
      throw new IllegalArgumentException(
          "The meter's reading after the firing is less than the one before it");
    }
  }

  /** What was used, in kilowatt-hours; empty unless both readings were noted. */
  public OptionalDouble kilowattHours() {
    return meterStart.isPresent() && meterEnd.isPresent()
        ? OptionalDouble.of((meterEnd.get() - meterStart.get()) / 1000.0)
        : OptionalDouble.empty();
  }
}
