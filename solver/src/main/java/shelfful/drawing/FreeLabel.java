package shelfful.drawing;

import java.util.List;

/**
 * Puts a name beside a thing where nothing else is.
 *
 * @param room it must stay in
 * @param taken boxes it must not cover
 */
record FreeLabel(SheetDraft sheet, Box room, List<Box> taken) {
  private static final double GAP = 1;
  private static final double LINE = 3;

  /** Tries right, left, over and under the thing; leaves the name out when all are taken. */
  void beside(Box thing, String name) {
    String words = TextStyle.QUIET.wording().clean(name);
    double width = TextStyle.QUIET.wording().width(words);
    double middle = thing.centre().y() + 1;
    List<Spot> starts =
        List.of(
            new Spot(thing.right() + GAP, middle),
            new Spot(thing.left() - GAP - width, middle),
            new Spot(thing.centre().x() - width / 2, thing.top() - GAP),
            new Spot(thing.centre().x() - width / 2, thing.bottom() + LINE));
    for (Spot start : starts) {
      Box box = new Box(start.x(), start.y() - 2.4, start.x() + width, start.y() + 0.8);
      if (room.holds(box) && sheet.isFree(box) && taken.stream().noneMatch(box::overlaps)) {
        sheet.box(box, Look.filled(Ink.WHITE));
        sheet.text(start, words, TextStyle.QUIET);
        return;
      }
    }
  }
}
