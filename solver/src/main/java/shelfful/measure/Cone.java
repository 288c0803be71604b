package shelfful.measure;

import java.util.List;
import java.util.Optional;

/**
 * A pyrometric cone by its number. Cones are names with an order, not numbers: 022 is the coolest,
 * 01 is cooler than 1, and 06 is not 6.
 *
 * <p>The order follows the published table of temperature equivalents for Orton cones 022 to 14
 * (Edward Orton Jr. Ceramic Foundation, 2016). A cone measures heat-work, so no temperature is
 * attached here.
 *
 * @param number as potters write it, for instance {@code 06} or {@code 6}
 */
public record Cone(String number) implements Comparable<Cone> {
  /** Every cone from the coolest to the hottest. */
  public static final List<String> NUMBERS =
      List.of(
          "022", "021", "020", "019", "018", "017", "016", "015", "014", "013", "012", "011", "010",
          "09", "08", "07", "06", "05.5", "05", "04", "03", "02", "01", "1", "2", "3", "4", "5",
          "5.5", "6", "7", "8", "9", "10", "11", "12", "13", "14");

  /** Refuses a number that is no cone. */
  public Cone {
    if (!NUMBERS.contains(number)) {
      throw new IllegalArgumentException("There is no cone " + number);
    }
  }

  /** The cone of this number, or empty when there is none. */
  public static Optional<Cone> find(String number) {
    return NUMBERS.contains(number) ? Optional.of(new Cone(number)) : Optional.empty();
  }

  /** How many cones lie between the two: 0 when equal, 1 for neighbours such as 01 and 1. */
  public int stepsFrom(Cone other) {
    return Math.abs(order() - other.order());
  }

  public boolean isHotterThan(Cone other) {
    return order() > other.order();
  }

  private int order() {
    return NUMBERS.indexOf(number);
  }

  @Override
  public int compareTo(Cone other) {
    return Integer.compare(order(), other.order());
  }
}
