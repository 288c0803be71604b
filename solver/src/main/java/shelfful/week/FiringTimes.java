package shelfful.week;

import java.time.LocalDateTime;

/**
 * When what happens in one firing. The kiln is busy from the first moment to the last.
 *
 * @param loads loading begins
 * @param lit loading is done and the kiln is switched on
 * @param hot the end of heating
 * @param cold the kiln may be opened
 * @param unpacks unpacking begins
 * @param unpacked the kiln is empty again
 */
public record FiringTimes(
    LocalDateTime loads,
    LocalDateTime lit,
    LocalDateTime hot,
    LocalDateTime cold,
    LocalDateTime unpacks,
    LocalDateTime unpacked) {

  /** Refuses moments out of order. */
  public FiringTimes {
    if (lit.isBefore(loads)
        || hot.isBefore(lit)
        || cold.isBefore(hot)
        || unpacks.isBefore(cold)
        || !unpacked.isAfter(loads)
        || unpacked.isBefore(unpacks)) {
      throw new IllegalArgumentException("The times of a firing are out of order");
    }
  }

  /** A firing of a program that is loaded at one time and unpacked from another. */
  public static FiringTimes of(Program program, LocalDateTime loads, LocalDateTime unpacks) {
    LocalDateTime lit = loads.plus(program.loading());
    LocalDateTime hot = lit.plus(program.preheating()).plus(program.up());
    return new FiringTimes(
        loads, lit, hot, hot.plus(program.down()), unpacks, unpacks.plus(program.unpacking()));
  }

  /** While the kiln is busy. */
  public Span busy() {
    return new Span(loads, unpacked);
  }
}
