package shelfful.drawing;

import java.util.List;

/**
 * The edges of one page of a shelf at its true size: where to cut, where the next page is laid, and
 * marks across each joint, half on one page and half on the other.
 */
record TileEdges(SheetDraft sheet, Tiling tiling, int column, int row) {
  private static final Pen CUT = Pen.solid(0.2, Ink.BLACK);
  private static final Pen LAY = Pen.dashed(0.2, Ink.MIDDLE, 3, 1.5);
  private static final double MARK = 2.5;
  private static final double[] SHARES = {0.25, 0.75};

  void draw() {
    Box own = tiling.own();
    Box window = tiling.window();
    if (column > 0) {
      sheet.line(window.corner(), new Spot(window.left(), window.bottom()), CUT);
    }
    if (row > 0) {
      sheet.line(window.corner(), new Spot(window.right(), window.top()), CUT);
    }
    if (column < tiling.columns() - 1) {
      sheet.line(new Spot(own.right(), own.top()), new Spot(own.right(), window.bottom()), LAY);
    }
    if (row < tiling.rows() - 1) {
      sheet.line(new Spot(own.left(), own.bottom()), new Spot(window.right(), own.bottom()), LAY);
    }
    for (double share : SHARES) {
      marks(own, share);
    }
  }

  private void marks(Box own, double share) {
    double y = own.top() + share * own.height();
    double x = own.left() + share * own.width();
    if (column > 0) {
      mark(new Spot(own.left(), y), joint(column - 1, row, column, row));
    }
    if (column < tiling.columns() - 1) {
      mark(new Spot(own.right(), y), joint(column, row, column + 1, row));
    }
    if (row > 0) {
      mark(new Spot(x, own.top()), joint(column, row - 1, column, row));
    }
    if (row < tiling.rows() - 1) {
      mark(new Spot(x, own.bottom()), joint(column, row, column, row + 1));
    }
  }

  private String joint(int column, int row, int nextColumn, int nextRow) {
    return tiling.name(column, row) + "–" + tiling.name(nextColumn, nextRow);
  }

  /** A diamond on the joint, as far as it lies on this page, with the names of the two pages. */
  private void mark(Spot at, String joint) {
    ViewClip clip = new ViewClip(tiling.window());
    List<Spot> diamond =
        List.of(at.plus(-MARK, 0), at.plus(0, MARK), at.plus(MARK, 0), at.plus(0, -MARK));
    sheet.add(new Mark.Path(clip.convex(diamond), true, Look.filled(Ink.DARK)));
    double width = TextStyle.QUIET.wording().width(joint);
    boolean left = at.x() + MARK + 1 + width > tiling.window().right();
    double x = left ? at.x() - MARK - 1 - width : at.x() + MARK + 1;
    Spot start = new Spot(x, at.y() + down(at));
    Box box = new Box(start.x(), start.y() - 2.6, start.x() + width, start.y() + 0.8);
    if (sheet.isFree(box) && tiling.window().holds(box)) {
      sheet.text(start, joint, TextStyle.QUIET);
    }
  }

  /** How far under a joint's mark its words stand, so that no joint runs through them. */
  private double down(Spot at) {
    if (at.y() < tiling.window().top() + 1) {
      return 3.5;
    }
    return at.y() > tiling.own().bottom() - 1 ? -1.2 : 1;
  }
}
