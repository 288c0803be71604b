package shelfful.week;

/**
 * What electricity costs.
 *
 * @param perKilowattHour in the currency's unit, not negative
 * @param currency as it is written behind a sum, for instance {@code EUR}
 */
public record Tariff(double perKilowattHour, String currency) {
  /** Refuses a price out of range. */
  public Tariff {
    if (!(perKilowattHour >= 0 && perKilowattHour <= 1_000_000)) {
      throw new IllegalArgumentException(
          "A kilowatt hour must cost from 0 to 1000000, not " + perKilowattHour);
    }
  }
}
