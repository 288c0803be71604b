package shelfful.drawing;

import java.util.List;
import shelfful.load.Layer;

/** One layer on the phone: its shelf from above, and its pieces to tick in the order of setting. */
final class PhoneLayer {
  /** The picture is laid out on paper of this size and then fills the phone, in millimetres. */
  private static final double WIDTH = 84;

  private static final double HEIGHT = 104;
  private static final double LEAST_SPOT = 2;

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;
  private final Layer layer;
  private final int order;

  PhoneLayer(Setting setting, GlazePalette palette, LengthWords words, Layer layer) {
    this.setting = setting;
    this.palette = palette;
    this.words = words;
    this.layer = layer;
    this.order = setting.layers().indexOf(layer) + 1;
  }

  String section() {
    LayerList list = LayerList.of(setting, palette, words, layer);
    StringBuilder html = new StringBuilder();
    String page = layer.id() + ", layer " + order + " of " + setting.layers().size();
    html.append("<section data-page=\"").append(Markup.text(page)).append("\"");
    html.append(together()).append(">\n");
    html.append(Markup.element("h2", page));
    html.append("<p>").append(Markup.name(list.shelf())).append(". ").append(figures());
    html.append("</p>\n").append(picture(list)).append("<p class=\"front\">front</p>\n");
    html.append("<p class=\"quiet\">").append(Markup.text(explained(list))).append("</p>\n");
    html.append("<ol class=\"set\">\n").append(shelfRow(list));
    list.rows().forEach(row -> html.append(pieceRow(row)));
    return html.append("</ol>\n</section>\n").toString();
  }

  /** Pages of layers that are set together have a mark in common. */
  private String together() {
    List<Layer> others = setting.setWith(layer);
    int first =
        others.stream().mapToInt(other -> setting.layers().indexOf(other) + 1).min().orElse(order);
    return others.isEmpty() ? "" : " data-with=\"" + Math.min(first, order) + "\"";
  }

  private String figures() {
    String gap =
        setting
            .figures(layer)
            .flatMap(measured -> measured.smallestGap())
            .map(least -> ", smallest gap " + words.full(least))
            .orElse("");
    return Markup.text(
        LayerHeading.carries(setting.on(layer))
            + ", clear height "
            + words.full(setting.clearHeight(layer))
            + gap
            + ".");
  }

  private static String explained(LayerList list) {
    return "Numbers " + list.explained() + ".";
  }

  private String picture(LayerList list) {
    SheetDraft sheet = new SheetDraft(SheetFormat.upright(PaperSize.A4), List.of(layer.id()));
    List<PostMark> posts = PostMark.of(setting, setting.under(layer), setting.standingOn(layer));
    ShelfPositions positions = new ShelfPositions(setting, layer, words);
    ShelfDrawer.Drawn drawn =
        new ShelfDrawer(setting, palette, sheet, layer, posts)
            .draw(new Box(0, 0, WIDTH, HEIGHT), positions);
    double left = positions.fromEdges() ? 8 : 1;
    double top = positions.fromEdges() ? 4 : 1;
    Box box = drawn.box();
    Box view = new Box(box.left() - left, box.top() - top, box.right() + 1, box.bottom() + 1);
    String spots =
        list.rows().stream().map(row -> spot(row, drawn.view())).reduce("", String::concat);
    String title = "The shelf of layer " + layer.id() + " from above";
    return SvgSurface.inline(
        sheet.picture(WIDTH, HEIGHT), new SvgSurface.Inline("shelf", title, view, spots));
  }

  /** What is touched on the picture, and ringed when the piece is next. */
  private String spot(LayerList.Row row, PlanView view) {
    Spot at = view.at(row.at());
    double radius = Math.max(LEAST_SPOT, view.onPaper(row.across().millimetres()) / 2);
    return "<circle class=\"spot\" id=\"at-"
        + id(row.number())
        + "\" cx=\""
        + Markup.number(at.x(), 2)
        + "\" cy=\""
        + Markup.number(at.y(), 2)
        + "\" r=\""
        + Markup.number(radius, 2)
        + "\"/>\n";
  }

  private String id(int number) {
    return "t" + order + "-" + number;
  }

  private String shelfRow(LayerList list) {
    String what = new LayerHeading(setting, words).first(layer);
    return row(new Row(id(0), false, "", "the shelf", list.shelf(), what, List.of()));
  }

  private String pieceRow(LayerList.Row piece) {
    String where = (piece.place() + "  " + piece.pointing()).strip();
    String shortly = piece.number() + " " + piece.form() + letter(piece.glaze());
    String number = Integer.toString(piece.number());
    String named = piece.form() + ", " + piece.glaze();
    return row(new Row(id(piece.number()), true, number, shortly, named, where, piece.upwards()));
  }

  /** The glaze's letter, with which it is written on the picture. */
  private static String letter(String glaze) {
    int end = glaze.indexOf(' ');
    return end > 0 && end <= 2 ? " " + glaze.substring(0, end) : "";
  }

  /** A further piece of a pile, on a line of its own under what it goes on or in. */
  private static String upper(LayerList.Upper one) {
    return "<span class=\"where\">then " + Markup.name(one.told()) + "</span>";
  }

  /** One thing to tick. */
  private record Row(
      String id,
      boolean piece,
      String number,
      String shortly,
      String what,
      String where,
      List<LayerList.Upper> upwards) {}

  private static String row(Row row) {
    return "<li data-short=\""
        + Markup.text(row.shortly())
        + "\" data-where=\""
        + Markup.text(row.where())
        + "\"><label><input type=\"checkbox\" autocomplete=\"off\" id=\""
        + row.id()
        + (row.piece() ? "\" data-piece=\"yes" : "")
        + "\"/><span class=\"number\">"
        + row.number()
        + "</span><span class=\"what\">"
        + Markup.name(row.what())
        + "<span class=\"where\">"
        + Markup.name(row.where())
        + "</span>"
        + row.upwards().stream().map(PhoneLayer::upper).reduce("", String::concat)
        + "</span></label></li>\n";
  }
}
