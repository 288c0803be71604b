package shelfful.inspect;

/**
 * A distance as the judge read it, leaning to the short side.
 *
 * @param micrometres a distance that the true one is certainly not shorter than
 * @param exact whether it was read without rounding
 */
record Reading(double micrometres, boolean exact) {
  /**
   * The one tolerance of the judge, and only for what cannot be read exactly: ovals, and anything
   * turned by other than quarter turns. Coordinates are whole micrometres and turns whole
   * thousandths of a degree, so a place that is right to the last digit can still read a fraction
   * of a micrometre short.
   */
  static final double TOLERANCE = 1;

  static final Reading UNLIMITED = new Reading(Double.POSITIVE_INFINITY, true);

  /**
   * Whether the distance is certainly at least the one required; exactly the required one is
   * enough.
   */
  boolean reaches(long required) {
    return withTolerance() >= required;
  }

  /** The one that stops a requirement first. */
  Reading orLess(Reading other) {
    return other.withTolerance() < withTolerance() ? other : this;
  }

  /** Whole micrometres, rounded down. */
  long whole() {
    return (long) Math.floor(micrometres);
  }

  private double withTolerance() {
    return exact ? micrometres : micrometres + TOLERANCE;
  }
}
