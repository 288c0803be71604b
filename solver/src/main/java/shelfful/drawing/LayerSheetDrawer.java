package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shelfful.kiln.KeepOut;
import shelfful.load.Layer;
import shelfful.load.StandingPost;

/** The sheet a potter sets one layer from, with further sheets where its key is long. */
final class LayerSheetDrawer {
  private static final double LEAST_PLAN = 96;
  private static final double UNDER_PLAN = 17;
  private static final double KEY_HEAD = 11;
  private static final double NOTE = 58;

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

  void draw(Layer layer) {
    List<StandingPost> under = setting.under(layer);
    List<PostMark> posts = PostMark.of(setting, under, setting.standingOn(layer));
    SheetDraft sheet = pages.open(Optional.of(layer.id()));
    double top = new LayerHeading(setting, words).draw(sheet, layer);
    Box body = sheet.body().below(top + 3);
    ShelfPositions positions = new ShelfPositions(setting, layer, words);
    List<KeyRow> rows = key(layer, posts, positions, body);
    double keyHeight =
        Math.min(KEY_HEAD + KeyColumns.height(rows), body.height() - UNDER_PLAN - LEAST_PLAN);
    Box plan = body.above(body.bottom() - keyHeight - UNDER_PLAN);
    ShelfDrawer drawer = new ShelfDrawer(setting, palette, sheet, layer, posts);
    ShelfDrawer.Drawn drawn = drawer.draw(plan);
    front(sheet, drawn, drawer.inTheWay());
    double keyTop = drawn.box().bottom() + UNDER_PLAN;
    keyHead(sheet, keyTop, layer, positions);
    List<KeyRow> left = KeyColumns.draw(sheet, body.below(keyTop + KEY_HEAD), rows);
    while (!left.isEmpty()) {
      left = continued(layer, left);
    }
  }

  /**
   * With a line of its own for glaze and batch where there is room, else on one line with the form.
   */
  private List<KeyRow> key(Layer layer, List<PostMark> posts, ShelfPositions positions, Box body) {
    KeyRows key = new KeyRows(palette, positions, KeyColumns.columnWidth(body.width()));
    double most = body.height() - UNDER_PLAN - KEY_HEAD - LEAST_PLAN * 1.3;
    List<KeyRow> airy = rows(key, layer, posts, true);
    return KeyColumns.height(airy) <= most ? airy : rows(key, layer, posts, false);
  }

  private List<KeyRow> rows(KeyRows key, Layer layer, List<PostMark> posts, boolean airy) {
    List<KeyRow> rows = new ArrayList<>(key.pieces(setting.on(layer), airy));
    rows.addAll(key.posts(posts, words));
    return rows;
  }

  private void front(SheetDraft sheet, ShelfDrawer.Drawn drawn, List<KeepOut> keepOuts) {
    Box body = sheet.body();
    Box box = drawn.box();
    double y = box.bottom() + 4.6;
    Spot middle = new Spot(body.centre().x(), y);
    Wording wording = TextStyle.SECTION.wording();
    double half = wording.width("FRONT") / 2 + 2.5;
    Pen pen = Pen.solid(0.9, Ink.BLACK);
    sheet.line(middle.plus(-half - 22, -1.3), middle.plus(-half, -1.3), pen);
    sheet.line(middle.plus(half, -1.3), middle.plus(half + 22, -1.3), pen);
    sheet.text(middle, "FRONT", TextStyle.SECTION, Anchor.MIDDLE, 40);
    ScaleBar.draw(sheet, new Spot(body.left(), y + 5.5), drawn.view().ratio(), words);
    String hatched =
        keepOuts.stream().map(KeepOut::name).distinct().collect(Collectors.joining(", "));
    if (!hatched.isEmpty()) {
      double down = 6.3;
      for (String line : TextStyle.SMALL.wording().wrap("Hatched, keep clear: " + hatched, NOTE)) {
        sheet.text(new Spot(body.right() - NOTE, y + down), line, TextStyle.SMALL, NOTE);
        down += TextStyle.SMALL.pitch();
        if (down > 10) {
          return;
        }
      }
    }
  }

  private void keyHead(SheetDraft sheet, double y, Layer layer, ShelfPositions positions) {
    Box body = sheet.body();
    sheet.line(new Spot(body.left(), y), new Spot(body.right(), y), Pen.THIN);
    boolean points = setting.on(layer).stream().anyMatch(piece -> piece.pointing().isPresent());
    String pointing = points ? "; → where the handle or long side points" : "";
    double end = sheet.text(new Spot(body.left(), y + 4.6), "Number", TextStyle.SMALL_STRONG);
    double left = end + 2;
    double line = y + 4.6;
    for (String told :
        TextStyle.QUIET.wording().wrap(positions.explained() + pointing, body.right() - left)) {
      sheet.text(new Spot(left, line), told, TextStyle.QUIET, body.right() - left);
      line += TextStyle.QUIET.pitch();
    }
  }

  private List<KeyRow> continued(Layer layer, List<KeyRow> rows) {
    SheetDraft sheet = pages.open(Optional.of(layer.id()));
    Box body = sheet.body();
    String title = layer.id() + ", the rest of its key";
    sheet.text(new Spot(body.left(), body.top() + 5), title, TextStyle.HEAD, body.width());
    return KeyColumns.draw(sheet, body.below(body.top() + 10), rows);
  }
}
