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
  double draw(SheetDraft sheet, AlikeLayers alike) {
    Box body = sheet.body();
    double right = body.right();
    double y = body.top() + 7;
    Layer layer = alike.first();
    double end =
        sheet.text(new Spot(body.left(), y), alike.names(), TextStyle.TITLE, body.width() * 0.35);
    if (alike.layers().size() > 1) {
      end = sheet.text(new Spot(end + 3, y), alike.times(), TextStyle.TITLE, 20);
    }
    Shelf shelf = setting.shelf(layer);
    sheet.text(new Spot(end + 5, y - 3.6), shelf.name(), TextStyle.STRONG, right - 49 - end - 5);
    sheet.text(new Spot(end + 5, y + 0.6), where(alike), TextStyle.BODY, right - 49 - end - 5);
    sheet.text(new Spot(right, y), turn(alike), TextStyle.SUBHEAD, Anchor.END, 48);
    sheet.line(new Spot(body.left(), y + 3.4), new Spot(right, y + 3.4), Pen.solid(0.5, Ink.BLACK));
    y += 9;
    for (String line : TextStyle.HEAD.wording().wrap(first(layer), body.width())) {
      sheet.text(new Spot(body.left(), y), line, TextStyle.HEAD, body.width());
      y += TextStyle.HEAD.pitch();
    }
    y -= TextStyle.HEAD.pitch();
    return strip(sheet, alike, y + 5.4);
  }

  private static String where(AlikeLayers alike) {
    String levels =
        alike.layers().stream()
            .map(layer -> Integer.toString(layer.level()))
            .collect(Collectors.joining(", "));
    String word = alike.layers().size() == 1 ? ", level " : ", levels ";
    return "Column " + alike.first().columnId() + word + levels;
  }

  /** When in the loading this sheet is wanted: {@code layer 2 of 4}. */
  private String turn(AlikeLayers alike) {
    String orders =
        alike.layers().stream()
            .map(layer -> Integer.toString(setting.layers().indexOf(layer) + 1))
            .collect(Collectors.joining(", "));
    String word = alike.layers().size() == 1 ? "layer " : "layers ";
    return word + orders + " of " + setting.layers().size();
  }

  /** What to do first. Shelves side by side may share posts, which then stand already. */
  String first(Layer layer) {
    List<StandingPost> already = setting.standAlready(layer);
    List<StandingPost> fresh = new ArrayList<>(setting.under(layer));
    fresh.removeAll(already);
    PostWords posts = new PostWords(setting, words);
    List<String> told = new ArrayList<>();
    if (!fresh.isEmpty()) {
      told.add("Put it on posts: " + posts.counted(fresh));
    }
    if (!already.isEmpty()) {
      told.add("On posts that stand already: " + posts.counted(already));
    }
    List<Layer> with = setting.setWith(layer);
    if (!with.isEmpty()) {
      String names = with.stream().map(Layer::id).collect(Collectors.joining(" and "));
      told.add("Ware reaches over the joint: set it together with " + names + ", by number");
    }
    return told.isEmpty() ? "Lay the shelf where it is drawn" : String.join(".  ", told);
  }

  /** Figures side by side, each under what it is; returns the y they end at. */
  private double strip(SheetDraft sheet, AlikeLayers alike, double y) {
    double x = sheet.body().left();
    for (Map.Entry<String, String> figure : figures(alike).entrySet()) {
      sheet.text(new Spot(x, y), figure.getKey(), TextStyle.QUIET, FIGURE - 2);
      sheet.text(new Spot(x, y + 4.2), figure.getValue(), TextStyle.STRONG, FIGURE - 2);
      x += FIGURE;
    }
    List<StandingPost> on = setting.standingOn(alike.first());
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

  private Map<String, String> figures(AlikeLayers alike) {
    Layer layer = alike.first();
    Optional<LayerFigures> measured = setting.figures(layer);
    List<SetPiece> pieces = setting.on(layer);
    Map<String, String> figures = new LinkedHashMap<>();
    figures.put("Pieces", Integer.toString(count(pieces)));
    measured
        .flatMap(LayerFigures::smallestGap)
        .ifPresent(gap -> figures.put("Smallest gap", words.full(gap)));
    figures.put("Clear height", words.full(setting.clearHeight(layer)));
    figures.put("Top of shelf at", tops(alike));
    figures.put(
        "Weight on it", kilograms(measured.map(LayerFigures::mass).orElseGet(() -> mass(pieces))));
    return figures;
  }

  private String tops(AlikeLayers alike) {
    return alike.layers().size() == 1
        ? words.full(alike.first().z())
        : alike.layers().stream()
            .map(layer -> words.bare(layer.z()))
            .collect(Collectors.joining(", "));
  }

  static Mass mass(List<SetPiece> pieces) {
    return pieces.stream().map(piece -> piece.ware().mass()).reduce(Mass.ZERO, Mass::plus);
  }

  /** Every piece of every pile. */
  static int count(List<SetPiece> pieces) {
    return pieces.stream().mapToInt(SetPiece::count).sum();
  }

  /** {@code 21 pieces, 7.3 kg}. */
  static String carries(List<SetPiece> pieces) {
    String count = count(pieces) == 1 ? "1 piece, " : count(pieces) + " pieces, ";
    return count + kilograms(mass(pieces));
  }

  static String kilograms(Mass mass) {
    return String.format(Locale.ROOT, "%.1f kg", mass.kilograms());
  }
}
