package shelfful.measure;

/**
 * A length as a whole number of micrometres, so that adding, comparing and saving are exact.
 *
 * <p>May be negative (a coordinate is a length). One sixteenth of an inch (1587.5 µm) is the finest
 * fraction people type that is not exact; it is off by half a micrometre.
 *
 * @param micrometres thousandths of a millimetre
 */
public record Length(long micrometres) implements Comparable<Length> {
  public static final Length ZERO = new Length(0);

  private static final double PER_MILLIMETRE = 1000.0;
  private static final double MILLIMETRES_PER_INCH = 25.4;

  /**
   * The nearest length to a number of millimetres.
   *
   * @throws IllegalArgumentException when the number is not finite
   */
  public static Length ofMillimetres(double millimetres) {
    if (!Double.isFinite(millimetres)) {
      throw new IllegalArgumentException("A length must be a finite number, not " + millimetres);
    }
    return new Length(Math.round(millimetres * PER_MILLIMETRE));
  }

  /** The nearest length to a number of inches (1 in = 25.4 mm exactly). */
  public static Length ofInches(double inches) {
    return ofMillimetres(inches * MILLIMETRES_PER_INCH);
  }

  public double millimetres() {
    return micrometres / PER_MILLIMETRE;
  }

  public double inches() {
    return millimetres() / MILLIMETRES_PER_INCH;
  }

  public Length plus(Length other) {
    return new Length(micrometres + other.micrometres);
  }

  public Length minus(Length other) {
    return new Length(micrometres - other.micrometres);
  }

  /** This length times a factor, rounded up: a size that shrinks must never be taken too small. */
  public Length scaledUp(double factor) {
    return new Length((long) Math.ceil(micrometres * factor - 1e-6));
  }

  public boolean isPositive() {
    return micrometres > 0;
  }

  public boolean isLongerThan(Length other) {
    return micrometres > other.micrometres;
  }

  public static Length longer(Length a, Length b) {
    return a.micrometres >= b.micrometres ? a : b;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(micrometres, other.micrometres);
  }

  @Override
  public String toString() {
    return millimetres() + " mm";
  }
}
