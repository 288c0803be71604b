package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import shelfful.kiln.KeepOut;
import shelfful.load.Layer;

/**
 * The sheet a potter sets one layer from, with further sheets where its key is long. Upright the
 * key stands under the shelf, across beside it.
 */
final class LayerSheetDrawer {
  private static final double LEAST_PLAN = 96;
  private static final double UNDER_PLAN = 17;
  private static final double KEY_BESIDE = 98;
  private static final double GUTTER = 8;
  private static final double NOTE = 58;
  private static final double HEAD_LINE = 3.67;
  private static final String KEY_WORD = "Number";

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;
  private final Pages pages;

  LayerSheetDrawer(Setting setting, GlazePalette palette, LengthWords words, Pages pages) {
    this.setting = setting;
    this.palette = palette;
    this.words = words;
    this.pages = pages;
  }

  /** One layer while its sheet is drawn. */
  private record Drawn(
      AlikeLayers alike, SheetDraft sheet, List<PostMark> posts, ShelfPositions positions) {
    Layer layer() {
      return alike.first();
    }
  }

  void draw(AlikeLayers alike) {
    Layer layer = alike.first();
    Drawn drawn =
        new Drawn(
            alike,
            pages.open(alike.ids()),
            PostMark.of(setting, setting.under(layer), setting.standingOn(layer)),
            new ShelfPositions(setting, layer, words));
    double top = new LayerHeading(setting, words).draw(drawn.sheet(), alike);
    Box body = drawn.sheet().body().below(top + 3);
    List<KeyRow> left = pages.format().landscape() ? beside(drawn, body) : under(drawn, body);
    while (!left.isEmpty()) {
      left = continued(alike, left);
    }
  }

  private List<KeyRow> under(Drawn drawn, Box body) {
    List<KeyRow> rows = key(drawn, body);
    double head = keyHeadHeight(drawn, body.width());
    double keyHeight =
        Math.min(
            head + KeyColumns.height(rows, body.width()), body.height() - UNDER_PLAN - LEAST_PLAN);
    double end = plan(drawn, body.above(body.bottom() - keyHeight));
    hatchedNote(drawn, new Spot(body.right() - NOTE, end - UNDER_PLAN + 10.9), NOTE);
    Box below = body.below(end);
    drawn.sheet().line(below.corner(), new Spot(below.right(), below.top()), Pen.THIN);
    keyHead(drawn, below);
    return KeyColumns.draw(drawn.sheet(), below.below(end + head), rows);
  }

  private List<KeyRow> beside(Drawn drawn, Box body) {
    Box key = new Box(body.right() - KEY_BESIDE, body.top(), body.right(), body.bottom());
    plan(drawn, new Box(body.left(), body.top(), key.left() - GUTTER, body.bottom()));
    keyHead(drawn, key);
    double head = keyHeadHeight(drawn, key.width());
    Spot note = key.corner().plus(0, head + 1);
    head += hatchedNote(drawn, note, key.width());
    KeyRows rows = new KeyRows(palette, drawn.positions(), key.width());
    return KeyColumns.draw(drawn.sheet(), key.below(key.top() + head), rows(rows, drawn, true));
  }

  /** The shelf with what belongs under it; returns the y that ends at. */
  private double plan(Drawn drawn, Box room) {
    ShelfDrawer drawer =
        new ShelfDrawer(setting, palette, drawn.sheet(), drawn.layer(), drawn.posts());
    ShelfDrawer.Drawn shelf =
        drawer.draw(room.above(room.bottom() - UNDER_PLAN), drawn.positions());
    front(drawn, shelf, room);
    return shelf.box().bottom() + UNDER_PLAN;
  }

  /**
   * With a line of its own for glaze and batch where there is room, else on one line with the form.
   */
  private List<KeyRow> key(Drawn drawn, Box body) {
    KeyRows key = new KeyRows(palette, drawn.positions(), KeyColumns.columnWidth(body.width()));
    double head = keyHeadHeight(drawn, body.width());
    double most = body.height() - UNDER_PLAN - head - LEAST_PLAN * 1.3;
    List<KeyRow> airy = rows(key, drawn, true);
    return KeyColumns.height(airy, body.width()) <= most ? airy : rows(key, drawn, false);
  }

  private List<KeyRow> rows(KeyRows key, Drawn drawn, boolean airy) {
    List<KeyRow> rows = new ArrayList<>(key.pieces(setting.on(drawn.layer()), airy));
    rows.addAll(key.posts(drawn.posts(), words));
    return rows;
  }

  private void front(Drawn drawn, ShelfDrawer.Drawn shelf, Box room) {
    SheetDraft sheet = drawn.sheet();
    double y = shelf.box().bottom() + 4.6;
    Spot middle = new Spot(shelf.box().centre().x(), y);
    double half = TextStyle.SECTION.wording().width("FRONT") / 2 + 2.5;
    double line = Math.min(22, shelf.box().width() / 2 - half);
    Pen pen = Pen.solid(0.9, Ink.BLACK);
    sheet.line(middle.plus(-half - line, -1.3), middle.plus(-half, -1.3), pen);
    sheet.line(middle.plus(half, -1.3), middle.plus(half + line, -1.3), pen);
    sheet.text(middle, "FRONT", TextStyle.SECTION, Anchor.MIDDLE, 40);
    ScaleBar.draw(sheet, new Spot(room.left(), y + 5.5), shelf.view().ratio(), words);
  }

  /** Draws what is hatched on the shelf, in at most two lines; returns how high that is. */
  private double hatchedNote(Drawn drawn, Spot at, double width) {
    String hatched =
        setting.inTheWay(drawn.layer()).stream()
            .map(KeepOut::name)
            .distinct()
            .collect(Collectors.joining(", "));
    if (hatched.isEmpty()) {
      return 0;
    }
    double down = 0;
    for (String line :
        TextStyle.SMALL.wording().wrap("Hatched, keep clear: " + hatched, width).stream()
            .limit(2)
            .toList()) {
      drawn.sheet().text(at.plus(0, down), line, TextStyle.SMALL, width);
      down += TextStyle.SMALL.pitch();
    }
    return down;
  }

  private List<String> keyHeadLines(Drawn drawn, double width) {
    boolean points =
        setting.on(drawn.layer()).stream().anyMatch(piece -> piece.pointing().isPresent());
    String pointing = points ? "; → where the handle or long side points" : "";
    double left = TextStyle.SMALL_STRONG.wording().width(KEY_WORD) + 2;
    return TextStyle.QUIET.wording().wrap(drawn.positions().explained() + pointing, width - left);
  }

  private double keyHeadHeight(Drawn drawn, double width) {
    return Math.max(2, keyHeadLines(drawn, width).size()) * HEAD_LINE + 3.6;
  }

  private void keyHead(Drawn drawn, Box box) {
    double line = box.top() + 4.6;
    SheetDraft sheet = drawn.sheet();
    double left = sheet.text(new Spot(box.left(), line), KEY_WORD, TextStyle.SMALL_STRONG) + 2;
    for (String told : keyHeadLines(drawn, box.width())) {
      sheet.text(new Spot(left, line), told, TextStyle.QUIET, box.right() - left);
      line += HEAD_LINE;
    }
  }

  private List<KeyRow> continued(AlikeLayers alike, List<KeyRow> rows) {
    SheetDraft sheet = pages.open(alike.ids());
    Box body = sheet.body();
    String title = alike.names() + ", the rest of its key";
    sheet.text(new Spot(body.left(), body.top() + 5), title, TextStyle.HEAD, body.width());
    return KeyColumns.draw(sheet, body.below(body.top() + 10), rows);
  }
}
