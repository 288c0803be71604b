package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.load.LoadRequest;

/** The first sheet: what is fired, the kiln from the side, what to fetch, and what to mind. */
final class CoverDrawer {
  private static final double CAUTIONS_WIDTH = 106;
  private static final double LEAST_SIDE_VIEW = 70;
  private static final double GUTTER = 8;

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;

  CoverDrawer(Setting setting, GlazePalette palette, LengthWords words) {
    this.setting = setting;
    this.palette = palette;
    this.words = words;
  }

  /** Draws the sheet; returns what of the list to fetch did not fit on it. */
  List<FetchList.Item> draw(Pages pages) {
    SheetDraft sheet = pages.open(Optional.empty());
    double top = title(sheet) + 4;
    List<FetchList.Item> items = new FetchList(setting, words).all();
    List<String> cautions = cautions();
    double cautionHeight = cautions.size() * TextStyle.SMALL.pitch() + 10 + Cautions.LINES.size();
    double most = sheet.body().bottom() - top - LEAST_SIDE_VIEW - 10;
    double fetch = 11 + items.size() * Table.PITCH;
    double bottom = Math.min(most, Math.max(cautionHeight, fetch));
    Box picture = sheet.body().below(top).above(sheet.body().bottom() - bottom - 6);
    double end = new KilnSideDrawer(setting, palette, sheet).draw(picture, words);
    Box lower = sheet.body().below(end + 7);
    cautionBox(sheet, lower);
    return fetch(sheet, lower, items);
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
    y += 4.6;
    sheet.text(new Spot(body.left(), y), madeBy(), TextStyle.QUIET, body.width());
    return y;
  }

  private String totals() {
    int layers = setting.layers().size();
    return layers
        + (layers == 1 ? " layer, " : " layers, ")
        + LayerHeading.kilograms(LayerHeading.mass(setting.placed()))
        + " of ware";
  }

  private String madeBy() {
    LoadRequest request = setting.load().request();
    String steps = request.steps() == 0 ? "ended by hand or time" : request.steps() + " steps";
    return "Columns: "
        + setting.plan().name()
        + ".  Search: seed "
        + request.seed()
        + ", "
        + steps
        + ".";
  }

  private static List<String> cautions() {
    List<String> lines = new ArrayList<>();
    for (String caution : Cautions.LINES) {
      lines.addAll(TextStyle.SMALL.wording().wrap(caution, CAUTIONS_WIDTH - 9));
    }
    return lines;
  }

  private void cautionBox(SheetDraft sheet, Box lower) {
    double left = lower.right() - CAUTIONS_WIDTH;
    double pitch = TextStyle.SMALL.pitch();
    double y = lower.top() + 5.5;
    sheet.text(new Spot(left + 3, y), Cautions.TITLE, TextStyle.SECTION, CAUTIONS_WIDTH - 6);
    y += 1.5;
    for (String caution : Cautions.LINES) {
      sheet.add(new Mark.Circle(new Spot(left + 4, y + pitch - 1), 0.5, Look.filled(Ink.BLACK)));
      for (String line : TextStyle.SMALL.wording().wrap(caution, CAUTIONS_WIDTH - 9)) {
        y += pitch;
        sheet.text(new Spot(left + 6, y), line, TextStyle.SMALL, CAUTIONS_WIDTH - 8);
      }
      y += 0.8;
    }
    sheet.box(
        new Box(left, lower.top(), lower.right(), y + 1.8),
        Look.outlined(Pen.solid(0.35, Ink.BLACK)));
  }

  private List<FetchList.Item> fetch(SheetDraft sheet, Box lower, List<FetchList.Item> items) {
    double width = lower.width() - CAUTIONS_WIDTH - GUTTER;
    double y = lower.top() + 5.5;
    sheet.text(new Spot(lower.left(), y), "Fetch", TextStyle.SECTION, width);
    y += 1.5;
    int fitting = (int) Math.floor((lower.bottom() - y) / Table.PITCH);
    boolean all = items.size() <= fitting;
    List<FetchList.Item> here = all ? items : items.subList(0, Math.max(0, fitting - 1));
    for (FetchList.Item item : here) {
      y += Table.PITCH;
      sheet.text(
          new Spot(lower.left() + 12, y), item.count() + " ×", TextStyle.STRONG, Anchor.END, 12);
      sheet.text(new Spot(lower.left() + 14, y), item.name(), TextStyle.BODY, width - 14);
    }
    if (!all) {
      sheet.text(
          new Spot(lower.left(), y + Table.PITCH), "more on the next page", TextStyle.BODY, width);
    }
    return items.subList(here.size(), items.size());
  }
}
