package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shelfful.inspect.LayerFigures;
import shelfful.kiln.Shelf;
import shelfful.load.Layer;
import shelfful.load.StandingPost;
import shelfful.measure.Mass;

/** The head of a layer's sheet: which shelf, on which posts, and what to mind on it. */
record LayerHeading(Setting setting, LengthWords words) {
  /** The room for one figure, in millimetres. */
  private static final double FIGURE = 26;

  /** Draws the head at the top of a sheet; returns the y it ends at. */
  double draw(SheetDraft sheet, Layer layer) {
    Box body = sheet.body();
    double right = body.right();
    double y = body.top() + 7;
    double end =
        sheet.text(new Spot(body.left(), y), layer.id(), TextStyle.TITLE, body.width() * 0.35);
    Shelf shelf = setting.shelf(layer);
    String where = "Column " + layer.columnId() + ", level " + layer.level();
    sheet.text(new Spot(end + 5, y - 3.6), shelf.name(), TextStyle.STRONG, right - 45 - end - 5);
    sheet.text(new Spot(end + 5, y + 0.6), where, TextStyle.BODY, right - 45 - end - 5);
    int order = setting.layers().indexOf(layer) + 1;
    String turn = "layer " + order + " of " + setting.layers().size();
    sheet.text(new Spot(right, y), turn, TextStyle.SUBHEAD, Anchor.END, 44);
    sheet.line(new Spot(body.left(), y + 3.4), new Spot(right, y + 3.4), Pen.solid(0.5, Ink.BLACK));
    y += 9;
    for (String line : TextStyle.HEAD.wording().wrap(first(layer), body.width())) {
      sheet.text(new Spot(body.left(), y), line, TextStyle.HEAD, body.width());
      y += TextStyle.HEAD.pitch();
    }
    y -= TextStyle.HEAD.pitch();
    return strip(sheet, layer, y + 5.4);
  }

  /** What to do first. Shelves side by side may share posts, which then stand already. */
  private String first(Layer layer) {
    List<Layer> earlier = setting.layers().subList(0, setting.layers().indexOf(layer));
    List<String> laid = earlier.stream().map(Layer::id).toList();
    Map<Boolean, List<StandingPost>> standing =
        setting.under(layer).stream()
            .collect(
                Collectors.partitioningBy(
                    post -> post.carries().stream().anyMatch(laid::contains)));
    PostWords posts = new PostWords(setting, words);
    List<String> told = new ArrayList<>();
    if (!standing.get(false).isEmpty()) {
      told.add("Put it on posts: " + posts.counted(standing.get(false)));
    }
    if (!standing.get(true).isEmpty()) {
      told.add("On posts that stand already: " + posts.counted(standing.get(true)));
    }
    return told.isEmpty() ? "Lay the shelf where it is drawn" : String.join(".  ", told);
  }

  /** Figures side by side, each under what it is; returns the y they end at. */
  private double strip(SheetDraft sheet, Layer layer, double y) {
    double x = sheet.body().left();
    for (Map.Entry<String, String> figure : figures(layer).entrySet()) {
      sheet.text(new Spot(x, y), figure.getKey(), TextStyle.QUIET, FIGURE - 2);
      sheet.text(new Spot(x, y + 4.2), figure.getValue(), TextStyle.STRONG, FIGURE - 2);
      x += FIGURE;
    }
    List<StandingPost> on = setting.standingOn(layer);
    double bottom = y + 5.4;
    if (!on.isEmpty()) {
      double width = sheet.body().right() - x;
      sheet.text(new Spot(x, y), "Posts to stand on it", TextStyle.QUIET, width);
      double line = y;
      for (String told :
          TextStyle.STRONG.wording().wrap(new PostWords(setting, words).counted(on), width)) {
        line += 4.2;
        sheet.text(new Spot(x, line), told, TextStyle.STRONG, width);
      }
      bottom = line + 1.2;
    }
    return bottom;
  }

  private Map<String, String> figures(Layer layer) {
    Optional<LayerFigures> measured = setting.figures(layer);
    List<SetPiece> pieces = setting.on(layer);
    Map<String, String> figures = new LinkedHashMap<>();
    figures.put("Pieces", Integer.toString(pieces.size()));
    measured
        .flatMap(LayerFigures::smallestGap)
        .ifPresent(gap -> figures.put("Smallest gap", words.full(gap)));
    figures.put("Clear height", words.full(setting.clearHeight(layer)));
    figures.put("Top of shelf at", words.full(layer.z()));
    figures.put(
        "Weight on it", kilograms(measured.map(LayerFigures::mass).orElseGet(() -> mass(pieces))));
    return figures;
  }

  static Mass mass(List<SetPiece> pieces) {
    return pieces.stream().map(piece -> piece.ware().mass()).reduce(Mass.ZERO, Mass::plus);
  }

  static String kilograms(Mass mass) {
    return String.format(Locale.ROOT, "%.1f kg", mass.kilograms());
  }
}
