package shelfful.drawing;

import java.util.Locale;

/**
 * A colour.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Ink(int red, int green, int blue) {
  public static final Ink BLACK = grey(0);
  public static final Ink DARK = grey(60);
  public static final Ink MIDDLE = grey(120);
  public static final Ink FAINT = grey(175);
  public static final Ink PALE = grey(232);
  public static final Ink WHITE = grey(255);

  /** Refuses parts out of range. */
  public Ink {
    if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
      throw new IllegalArgumentException(
          "The parts of a colour must be from 0 to 255, not " + red + ", " + green + ", " + blue);
    }
  }

  /** A grey from 0 (black) to 255 (white). */
  public static Ink grey(int level) {
    return new Ink(level, level, level);
  }

  /** The colour written as {@code #rrggbb}, or a middle grey where the text is no colour. */
  static Ink ofHex(String hex) {
    if (!hex.matches("#[0-9a-fA-F]{6}")) {
      return MIDDLE;
    }
    int bits = Integer.parseInt(hex.substring(1), 16);
    return new Ink(bits >> 16, bits >> 8 & 0xff, bits & 0xff);
  }

  /**
   * This colour thinned with white until so light that black lines and letters stand out from it.
   */
  Ink tint() {
    return new Ink(thin(red), thin(green), thin(blue));
  }

  private static int thin(int part) {
    return 255 - (255 - part) * 22 / 100;
  }

  /** The colour as {@code #rrggbb}. */
  public String hex() {
    return String.format(Locale.ROOT, "#%06x", red << 16 | green << 8 | blue);
  }

  /** Relative luminance, 0 black to 1 white (WCAG 2.2, "relative luminance"). */
  public double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  private static double linear(int part) {
    double share = part / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
