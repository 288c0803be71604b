package shelfful.ui.shelfview;

import shelfful.drawing.Spot;

/**
 * Which part of the paper is seen, and how large.
 *
 * @param paper the sheets of a layer
 * @param screen what they are seen through, in pixels
 * @param scale pixels for a millimetre of paper, positive
 * @param left the paper's x at the left edge of the screen, in millimetres
 * @param top the paper's y at the upper edge of the screen, in millimetres
 */
public record ShelfViewport(Paper paper, Size screen, double scale, double left, double top) {
  private static final double EDGE = 12;
  private static final double MOST = 16;

  /** A width and a height. */
  public record Size(double width, double height) {}

  /**
   * Sheets of one size under each other.
   *
   * @param sheet the size of one, in millimetres
   * @param count how many, at least one
   */
  public record Paper(Size sheet, int count) {
    /** Free between two sheets, in millimetres. */
    public static final double GAP = 6;

    /** The y of the upper edge of a sheet, counted from 0. */
    public double topOf(int sheetIndex) {
      return sheetIndex * (sheet.height() + GAP);
    }

    double height() {
      return topOf(count) - GAP;
    }
  }

  /** The first sheet as large as the screen takes it whole. */
  public static ShelfViewport fitted(Paper paper, Size screen) {
    return new ShelfViewport(paper, screen, fittingScale(paper, screen), 0, 0).kept();
  }

  private static double fittingScale(Paper paper, Size screen) {
    double across = (screen.width() - 2 * EDGE) / paper.sheet().width();
    double down = (screen.height() - 2 * EDGE) / paper.sheet().height();
    return Math.max(0.05, Math.min(across, down));
  }

  /** Whether the first sheet is as large as the screen takes it whole. */
  public boolean isFitted() {
    return scale == fittingScale(paper, screen);
  }

  /** Another screen: what was fitted is fitted again, else the middle stays where it is. */
  public ShelfViewport through(Size other) {
    if (isFitted()) {
      return fitted(paper, other);
    }
    double right = (screen.width() - other.width()) / 2 / scale;
    double down = (screen.height() - other.height()) / 2 / scale;
    return new ShelfViewport(paper, other, scale, left + right, top + down).kept();
  }

  /**
   * Larger or smaller, with what lies under a place of the screen staying there. Never smaller than
   * fitted, never more than 16 times as large.
   */
  public ShelfViewport zoomed(double factor, double x, double y) {
    double fitting = fittingScale(paper, screen);
    double next = Math.max(fitting, Math.min(fitting * MOST, scale * factor));
    Spot still = toPaper(x, y);
    return new ShelfViewport(paper, screen, next, still.x() - x / next, still.y() - y / next)
        .kept();
  }

  /** The paper pushed by pixels to the right and down. */
  public ShelfViewport pushed(double right, double down) {
    return new ShelfViewport(paper, screen, scale, left - right / scale, top - down / scale).kept();
  }

  /** With a place of the paper as near the middle of the screen as the paper's edges allow. */
  public ShelfViewport centredOn(Spot at) {
    double x = at.x() - screen.width() / scale / 2;
    double y = at.y() - screen.height() / scale / 2;
    return new ShelfViewport(paper, screen, scale, x, y).kept();
  }

  /** The paper's place under a place of the screen. */
  public Spot toPaper(double x, double y) {
    return new Spot(left + x / scale, top + y / scale);
  }

  public double screenX(double paperX) {
    return (paperX - left) * scale;
  }

  public double screenY(double paperY) {
    return (paperY - top) * scale;
  }

  /** With the paper in the middle where it is smaller than the screen, else without much beside. */
  private ShelfViewport kept() {
    double x = kept(left, paper.sheet().width(), screen.width());
    double y = kept(top, paper.height(), screen.height());
    return new ShelfViewport(paper, screen, scale, x, y);
  }

  private double kept(double wanted, double length, double pixels) {
    double seen = pixels / scale;
    double edge = EDGE / scale;
    double last = length + edge - seen;
    return last <= -edge ? (length - seen) / 2 : Math.max(-edge, Math.min(last, wanted));
  }
}
