package shelfful.drawing;

import java.util.List;

/** The cautions in a frame. All lengths are millimetres of paper. */
final class CautionBox {
  private static final double TITLE = 7;
  private static final double BETWEEN = 0.8;
  private static final double INDENT = 6;
  private static final double END = 1.8;

  private CautionBox() {}

  /** How high the frame becomes at a width. */
  static double height(double width) {
    int lines = Cautions.LINES.stream().mapToInt(caution -> lines(caution, width).size()).sum();
    return TITLE + lines * TextStyle.SMALL.pitch() + Cautions.LINES.size() * BETWEEN + END;
  }

  /** Draws the frame from its upper left corner; returns the y it ends at. */
  static double draw(SheetDraft sheet, Spot corner, double width) {
    double left = corner.x();
    double pitch = TextStyle.SMALL.pitch();
    Spot title = corner.plus(3, 5.5);
    sheet.text(title, Cautions.TITLE, TextStyle.SECTION, width - INDENT);
    double y = corner.y() + TITLE;
    for (String caution : Cautions.LINES) {
      sheet.add(new Mark.Circle(new Spot(left + 4, y + pitch - 1), 0.5, Look.filled(Ink.BLACK)));
      for (String line : lines(caution, width)) {
        y += pitch;
        sheet.text(new Spot(left + INDENT, y), line, TextStyle.SMALL, width - INDENT - 2);
      }
      y += BETWEEN;
    }
    Box frame = new Box(left, corner.y(), left + width, y + END);
    sheet.box(frame, Look.outlined(Pen.solid(0.35, Ink.BLACK)));
    return frame.bottom();
  }

  private static List<String> lines(String caution, double width) {
    return TextStyle.SMALL.wording().wrap(caution, width - INDENT - 3);
  }
}
