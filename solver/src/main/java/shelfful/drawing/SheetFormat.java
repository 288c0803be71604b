package shelfful.drawing;

/**
 * Paper as it is printed on.
 *
 * @param size of the paper
 * @param landscape whether its longer side lies across
 */
public record SheetFormat(PaperSize size, boolean landscape) {
  /** Room for the foot line under what may be printed on, in millimetres. */
  private static final double FOOT = 6;

  public static SheetFormat upright(PaperSize size) {
    return new SheetFormat(size, false);
  }

  /** In millimetres. */
  public double width() {
    return landscape ? size.height() : size.width();
  }

  /** In millimetres. */
  public double height() {
    return landscape ? size.width() : size.height();
  }

  /** What may be printed on, above the page's foot line. */
  Box body() {
    double margin = PaperSize.MARGIN;
    return new Box(margin, margin, width() - margin, height() - margin - FOOT);
  }
}
