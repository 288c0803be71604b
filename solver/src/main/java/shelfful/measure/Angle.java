package shelfful.measure;

/**
 * A direction or turn in the plan, anticlockwise from the x axis, as whole thousandths of a degree.
 *
 * @param millidegrees from 0 up to but not including 360 000
 */
public record Angle(int millidegrees) {
  public static final Angle ZERO = new Angle(0);

  private static final int FULL_TURN = 360_000;

  /** Brings any number of turns into one. */
  public Angle {
    millidegrees = Math.floorMod(millidegrees, FULL_TURN);
  }

  /**
   * The nearest angle to a number of degrees.
   *
   * @throws IllegalArgumentException when the number is not finite
   */
  public static Angle ofDegrees(double degrees) {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("An angle must be a finite number, not " + degrees);
    }
    return new Angle((int) Math.round((degrees % 360) * 1000));
  }

  /** The nearest angle to a number of radians. */
  public static Angle ofRadians(double radians) {
    return ofDegrees(Math.toDegrees(radians));
  }

  public double degrees() {
    return millidegrees / 1000.0;
  }

  public double radians() {
    return Math.toRadians(degrees());
  }
}
