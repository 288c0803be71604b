package shelfful.measure;

/**
 * A mass as a whole number of grams.
 *
 * @param grams not negative
 */
public record Mass(long grams) implements Comparable<Mass> {
  public static final Mass ZERO = new Mass(0);

  /** Refuses a negative mass. */
  public Mass {
    if (grams < 0) {
      throw new IllegalArgumentException("A mass must not be negative: " + grams + " g");
    }
  }

  /**
   * The nearest mass to a number of kilograms.
   *
   * @throws IllegalArgumentException when the number is not finite or negative
   */
  public static Mass ofKilograms(double kilograms) {
    if (!Double.isFinite(kilograms)) {
      throw new IllegalArgumentException("A mass must be a finite number, not " + kilograms);
    }
    return new Mass(Math.round(kilograms * 1000));
  }

  public double kilograms() {
    return grams / 1000.0;
  }

  public Mass plus(Mass other) {
    return new Mass(grams + other.grams);
  }

  @Override
  public int compareTo(Mass other) {
    return Long.compare(grams, other.grams);
  }
}
