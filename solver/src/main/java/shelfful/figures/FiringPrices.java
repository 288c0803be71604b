package shelfful.figures;

import java.util.OptionalDouble;

/**
 * What a firing costs, in the potter's own money.
 *
 * @param perKilowattHour of electricity; empty when not given
 * @param perFiring what each firing costs besides (shelves, wash, time); empty when not given
 */
public record FiringPrices(OptionalDouble perKilowattHour, OptionalDouble perFiring) {
  /** Nothing is known of prices. */
  public static final FiringPrices UNKNOWN =
      new FiringPrices(OptionalDouble.empty(), OptionalDouble.empty());

  /** Refuses prices that are negative or no numbers. */
  public FiringPrices {
    if (!(perKilowattHour.orElse(0) >= 0 && perFiring.orElse(0) >= 0)) {
      throw new IllegalArgumentException("A price must be a number of at least 0");
    }
  }

  /**
   * What a firing cost that used so much; empty when no price is known, or when electricity has a
   * price and the meter was not read.
   */
  OptionalDouble cost(OptionalDouble kilowattHours) {
    if (perKilowattHour.isEmpty()) {
      return perFiring;
    }
    return kilowattHours.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            perKilowattHour.getAsDouble() * kilowattHours.getAsDouble() + perFiring.orElse(0));
  }
}
