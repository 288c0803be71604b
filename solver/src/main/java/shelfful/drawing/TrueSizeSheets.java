package shelfful.drawing;

import java.util.List;
import java.util.Set;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.measure.Point;

/**
 * Shelves at their true size, each spread over as many pages as it needs, to be cut, joined and
 * laid on the shelf or on a board of its size: the ware is then set on its own outline. Every page
 * has a ruler that proves the printer kept the size. Outlines only, so that little is printed.
 */
public final class TrueSizeSheets {
  private static final double HEAD = 19;

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;
  private final Pages pages;

  private TrueSizeSheets(InspectedLoad load, Printing printing) {
    this.setting = new Setting(load);
    this.palette = new GlazePalette(setting);
    this.words = new LengthWords(printing.unit());
    this.pages = new Pages(printing.format());
  }

  /**
   * Draws layers at true size.
   *
   * @param layerIds the layers wanted; none for all
   * @throws IllegalArgumentException when the load has no layer of such a name
   */
  public static LoadDrawing of(InspectedLoad load, Printing printing, Set<String> layerIds) {
    for (String id : layerIds) {
      if (load.load().layer(id).isEmpty()) {
        throw new IllegalArgumentException("The load has no layer " + id);
      }
    }
    TrueSizeSheets sheets = new TrueSizeSheets(load, printing);
    for (AlikeLayers alike : AlikeLayers.of(sheets.setting)) {
      if (layerIds.isEmpty() || alike.ids().stream().anyMatch(layerIds::contains)) {
        sheets.layer(alike);
      }
    }
    String about = sheets.setting.studio().name() + " – " + FiringWords.of(sheets.setting);
    String edition = printing.edition().words(PlanMark.of(load.load()));
    return new LoadDrawing(
        TextStyle.BODY.wording().clean(about + ", true size"), sheets.pages.finish(about, edition));
  }

  private void layer(AlikeLayers alike) {
    List<Point> contour = setting.contour(alike.first());
    Box body = pages.format().body();
    Tiling tiling =
        Tiling.over(Reach.alongX(contour), Reach.alongY(contour), body.below(body.top() + HEAD));
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        PlanView view = tiling.view(column, row);
        List<Spot> shelf = contour.stream().map(view::at).toList();
        if (new ViewClip(tiling.own()).convex(shelf).size() > 2) {
          page(alike, tiling, column, row);
        }
      }
    }
  }

  private void page(AlikeLayers alike, Tiling tiling, int column, int row) {
    SheetDraft sheet = pages.open(alike.ids());
    PlanView view = tiling.view(column, row);
    sheet.shows(view);
    head(sheet, alike, tiling, tiling.name(column, row));
    Outlines outlines = new Outlines(sheet, view, new ViewClip(tiling.window()));
    Layer layer = alike.first();
    outlines.run(setting.contour(layer).stream().map(view::at).toList(), Pen.solid(0.6, Ink.BLACK));
    for (PostMark post : PostMark.of(setting, setting.under(layer), setting.standingOn(layer))) {
      outlines.post(post);
    }
    setting.on(layer).forEach(outlines::piece);
    setting.on(layer).forEach(piece -> outlines.label(piece, palette.of(piece).letter()));
    new TileEdges(sheet, tiling, column, row).draw();
  }

  private void head(SheetDraft sheet, AlikeLayers alike, Tiling tiling, String name) {
    Box body = sheet.body();
    String title = alike.names() + " " + alike.times();
    Spot at = new Spot(body.left(), body.top() + 4);
    double end = sheet.text(at, title.strip() + ", true size: " + name, TextStyle.HEAD, 90);
    String first = tiling.name(0, 0);
    String last = tiling.name(tiling.columns() - 1, tiling.rows() - 1);
    String told = first + " to " + last + ", letters from the left, numbers from the far side;";
    double most = body.right() - end - 4;
    sheet.text(at.plus(end + 4 - at.x(), -1.4), told, TextStyle.QUIET, most);
    String cut = "cut along full lines, lay the cut edge on the dashed one";
    sheet.text(at.plus(end + 4 - at.x(), 2), cut, TextStyle.QUIET, most);
    ScaleBar.draw(sheet, at.plus(0, 7.5), 1, words);
  }
}
