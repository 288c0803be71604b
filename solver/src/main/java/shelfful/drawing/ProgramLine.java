package shelfful.drawing;

import java.util.Optional;

/** The controller's program and the hours up and down, with a line to write on where not given. */
record ProgramLine(ProgramNote program) {
  private static final double GAP = 1.5;
  private static final double HOURS = 16;

  /** Draws the line from a spot on its base line, no wider than so many millimetres. */
  void draw(SheetDraft sheet, Spot at, double width) {
    double right = at.x() + width;
    double hoursWidth = 2 * (HOURS + 22);
    double x = at.x();
    x = field(sheet, new Spot(x, at.y()), "Program", program.name(), width - hoursWidth - 18);
    x = field(sheet, new Spot(x, at.y()), "Hours up", program.hoursUp(), HOURS);
    field(sheet, new Spot(x, at.y()), "Hours down", program.hoursDown(), right - x - 20);
  }

  private static double field(
      SheetDraft sheet, Spot at, String title, Optional<String> value, double room) {
    double from = sheet.text(at, title, TextStyle.QUIET) + GAP;
    Spot start = new Spot(from, at.y());
    value.ifPresent(told -> sheet.text(start, told, TextStyle.STRONG, room));
    if (value.isEmpty()) {
      sheet.line(start.plus(0, 0.6), start.plus(room, 0.6), Pen.RULE);
    }
    return from + room + 3;
  }
}
