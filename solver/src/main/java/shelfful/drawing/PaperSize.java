package shelfful.drawing;

/** Paper sizes, upright. */
public enum PaperSize {
  A4(210, 297),
  LETTER(215.9, 279.4);

  /**
   * Kept free on every side, in millimetres: home and office printers leave up to 12 mm unprinted.
   */
  static final double MARGIN = 14;

  private final double width;
  private final double height;

  PaperSize(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** In millimetres. */
  public double width() {
    return width;
  }

  /** In millimetres. */
  public double height() {
    return height;
  }
}
