package shelfful.ui.look;

import shelfful.drawing.Ink;

/**
 * What a colour looks like to eyes without one kind of cones, and in grey. The matrices are those
 * for severity 1.0 of G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on
 * Visualization and Computer Graphics 15(6), 2009, applied to linear light.
 */
public enum ColourVision {
  /** As it is. */
  USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
  /** Without the cones for long waves: protanopia. */
  WITHOUT_LONG(
      0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
  /** Without the cones for middle waves: deuteranopia. */
  WITHOUT_MIDDLE(
      0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
  /** Without the cones for short waves: tritanopia. */
  WITHOUT_SHORT(
      1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900),
  /** Luminance alone, by the weights of WCAG 2.2. */
  GREY(0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722);

  private final double[] matrix;

  ColourVision(double... matrix) {
    this.matrix = matrix;
  }

  /** The colour as it is seen. */
  public Ink seen(Ink colour) {
    double[] light = {linear(colour.red()), linear(colour.green()), linear(colour.blue())};
    return new Ink(part(light, 0), part(light, 3), part(light, 6));
  }

  private int part(double[] light, int row) {
    double sum = matrix[row] * light[0] + matrix[row + 1] * light[1] + matrix[row + 2] * light[2];
    double kept = Math.max(0, Math.min(1, sum));
    double share = kept <= 0.0031308 ? 12.92 * kept : 1.055 * Math.pow(kept, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * share);
  }

  private static double linear(int part) {
    double share = part / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /** Contrast by WCAG 2.2 of two colours as they are seen: 1 for alike, 21 for black and white. */
  public double contrast(Ink one, Ink other) {
    double first = seen(one).luminance();
    double second = seen(other).luminance();
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }
}
