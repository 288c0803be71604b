package shelfful.drawing;

/**
 * How a shelf at its true size is spread over pages. A page's window shows its own part of the
 * shelf and, at the right and the bottom, a strip of the next pages' parts to lay them on.
 *
 * @param window of a page, millimetres of paper
 * @param columns of pages from left to right
 * @param rows of pages from the far side to the front
 * @param left the chamber's x at the left edge of the first column
 * @param far the chamber's y at the far edge of the first row
 */
record Tiling(Box window, int columns, int rows, double left, double far) {
  /** The width of the strip, in millimetres. */
  static final double STRIP = 8;

  /** As few pages as cover a shelf, the shelf in their middle. */
  static Tiling over(Reach across, Reach deep, Box window) {
    int columns = (int) Math.ceil(across.length() / (window.width() - STRIP));
    int rows = (int) Math.ceil(deep.length() / (window.height() - STRIP));
    double width = columns * (window.width() - STRIP);
    double depth = rows * (window.height() - STRIP);
    return new Tiling(
        window, columns, rows, across.middle() - width / 2, deep.middle() + depth / 2);
  }

  /** How places lie on a page of this tiling. */
  PlanView view(int column, int row) {
    double x = left + column * (window.width() - STRIP);
    double y = far - row * (window.height() - STRIP);
    return new PlanView(1, window.corner().plus(-x, y));
  }

  /** What a page has for its own, without the strips. */
  Box own() {
    return new Box(window.left(), window.top(), window.right() - STRIP, window.bottom() - STRIP);
  }

  /** {@code B2}: columns by letters from the left, rows by numbers from the far side. */
  String name(int column, int row) {
    String letter = column < 26 ? Character.toString('A' + column) : "Z" + column;
    return letter + (row + 1);
  }
}
