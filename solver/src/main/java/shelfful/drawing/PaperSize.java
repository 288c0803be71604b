package shelfful.drawing;

/** Paper, upright. */
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

  /** What may be printed on, above the page's foot line. */
  Box body() {
    return new Box(MARGIN, MARGIN, width - MARGIN, height - MARGIN - 6);
  }
}
