package shelfful.drawing;

import java.util.List;

/**
 * The first sheet: what is fired, the kiln from the side, what to fetch, and what to mind. Upright
 * the lists stand under the kiln, across beside it.
 */
final class CoverDrawer {
  private static final double CAUTIONS_WIDTH = 106;
  private static final double CAUTIONS_BESIDE = 96;
  private static final double LEAST_SIDE_VIEW = 70;
  private static final double GUTTER = 8;
  private static final double FETCH_HEAD = 11;

  /** Lines kept free for telling what the next page has. */
  private static final int PAGE_TWO = 2;

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;
  private final Printing printing;

  CoverDrawer(Setting setting, GlazePalette palette, LengthWords words, Printing printing) {
    this.setting = setting;
    this.palette = palette;
    this.words = words;
    this.printing = printing;
  }

  /** Draws the sheet; returns what of the list to fetch did not fit on it. */
  List<FetchList.Item> draw(Pages pages) {
    SheetDraft sheet = pages.open();
    Box body = sheet.body().below(title(sheet) + 4);
    List<FetchList.Item> items = new FetchList(setting, words).all();
    return pages.format().landscape() ? across(sheet, body, items) : upright(sheet, body, items);
  }

  private List<FetchList.Item> upright(SheetDraft sheet, Box body, List<FetchList.Item> items) {
    double most = body.height() - LEAST_SIDE_VIEW - 10;
    double fetch = FETCH_HEAD + (items.size() + 2) * Table.PITCH;
    double bottom = Math.min(most, Math.max(CautionBox.height(CAUTIONS_WIDTH), fetch));
    double end = kiln(sheet, body.above(body.bottom() - bottom - 6));
    Box lower = body.below(end + 7);
    CautionBox.draw(sheet, new Spot(lower.right() - CAUTIONS_WIDTH, lower.top()), CAUTIONS_WIDTH);
    double right = lower.right() - CAUTIONS_WIDTH - GUTTER;
    return fetch(sheet, new Box(lower.left(), lower.top(), right, lower.bottom()), items);
  }

  private List<FetchList.Item> across(SheetDraft sheet, Box body, List<FetchList.Item> items) {
    double middle = body.right() - CAUTIONS_BESIDE - GUTTER;
    kiln(sheet, new Box(body.left(), body.top(), middle, body.bottom()));
    double end = CautionBox.draw(sheet, new Spot(middle + GUTTER, body.top()), CAUTIONS_BESIDE);
    Box lower = new Box(middle + GUTTER, end + 3, body.right(), body.bottom());
    return fetch(sheet, lower, items);
  }

  private double kiln(SheetDraft sheet, Box room) {
    return new KilnSideDrawer(setting, palette, sheet).draw(room, words);
  }

  private double title(SheetDraft sheet) {
    Box body = sheet.body();
    double y = body.top() + 7;
    sheet.text(new Spot(body.left(), y), setting.studio().name(), TextStyle.TITLE, body.width());
    y += 6.5;
    sheet.text(new Spot(body.left(), y), FiringWords.of(setting), TextStyle.SUBHEAD, body.width());
    y += 3.2;
    sheet.line(new Spot(body.left(), y), new Spot(body.right(), y), Pen.solid(0.5, Ink.BLACK));
    y += 6.5;
    double end =
        sheet.text(new Spot(body.left(), y), FiringWords.counts(setting), TextStyle.HEAD, 90);
    sheet.text(new Spot(end + 6, y), totals(), TextStyle.BODY, body.right() - end - 6);
    y += 4.8;
    if (printing.limit().isPresent()) {
      sheet.text(new Spot(body.left(), y), printing.limit().get(), TextStyle.BODY, body.width());
      y += 4.8;
    }
    sheet.text(
        new Spot(body.left(), y), FiringWords.madeBy(setting), TextStyle.QUIET, body.width());
    y += 6;
    new ProgramLine(printing.program()).draw(sheet, new Spot(body.left(), y), body.width());
    return y;
  }

  private String totals() {
    int layers = setting.layers().size();
    return layers
        + (layers == 1 ? " layer, " : " layers, ")
        + LayerHeading.kilograms(LayerHeading.mass(setting.placed()))
        + " of ware";
  }

  private List<FetchList.Item> fetch(SheetDraft sheet, Box box, List<FetchList.Item> items) {
    CoverList list = new CoverList(sheet, box);
    list.heading("Fetch");
    int room = list.room() - PAGE_TWO;
    boolean all = items.size() <= room;
    List<FetchList.Item> here = all ? items : items.subList(0, Math.max(0, room - 1));
    here.forEach(item -> list.line(item.count(), item.name()));
    if (!all) {
      list.remark("More to fetch on page 2.");
    }
    List<PickList.Kind> kinds = new PickList(setting).kinds();
    boolean waits = !setting.load().leftOut().isEmpty();
    if (!kinds.isEmpty() && list.room() >= kinds.size() + PAGE_TWO + 2) {
      list.heading("Bring");
      kinds.forEach(kind -> list.line(kind.count(), named(kind.first())));
      list.remark(waits ? "What waits and why: page 2." : "On which layer: page 2.");
    } else {
      list.remark(waits ? "Ware to bring, what waits and why: page 2." : "Ware to bring: page 2.");
    }
    return items.subList(here.size(), items.size());
  }

  private String named(SetPiece piece) {
    GlazeSign sign = palette.of(piece);
    return piece.name() + ", " + (sign.letter() + " " + sign.name()).strip();
  }
}
