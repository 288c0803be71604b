package shelfful.geometry;

/** Checks of numbers as they come in; each names the value in its message. */
final class Finite {
  private Finite() {}

  static void number(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be a finite number but is " + value);
    }
  }

  static void numbers(double... values) {
    for (double value : values) {
      number("each coordinate and angle", value);
    }
  }

  static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be greater than 0 mm but is " + value);
    }
  }
}
