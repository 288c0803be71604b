package shelfful.drawing;

import java.util.List;
import shelfful.inspect.InspectedLoad;
import shelfful.measure.LengthUnit;

/**
 * The loading sheets of one load: a cover, lists, then a sheet for each layer in the order they are
 * loaded, one for several that are alike. The same load gives the same marks whatever the machine's
 * language, place or clock.
 *
 * @param title for the document, printable
 * @param sheets in order
 */
public record LoadDrawing(String title, List<Sheet> sheets) {
  /** Takes its own copy. */
  public LoadDrawing {
    sheets = List.copyOf(sheets);
  }

  /** Draws a load on upright paper, with nothing on it but what the load says. */
  public static LoadDrawing of(InspectedLoad load, PaperSize paper, LengthUnit unit) {
    return of(load, Printing.plain(paper, unit));
  }

  /**
   * Draws a load.
   *
   * @param load passed by the judge; where it gives no figures for a layer they are left out of
   *     that layer's head
   */
  public static LoadDrawing of(InspectedLoad load, Printing printing) {
    Setting setting = new Setting(load);
    GlazePalette palette = new GlazePalette(setting);
    LengthWords words = new LengthWords(printing.unit());
    Pages pages = new Pages(printing.format());
    List<FetchList.Item> toFetch = new CoverDrawer(setting, palette, words, printing).draw(pages);
    new ListsDrawer(setting, palette, words).draw(pages, toFetch);
    LayerSheetDrawer drawer = new LayerSheetDrawer(setting, palette, words, pages);
    AlikeLayers.of(setting).forEach(drawer::draw);
    String about = setting.studio().name() + " – " + FiringWords.of(setting);
    String edition = printing.edition().words(PlanMark.of(load.load()));
    return new LoadDrawing(TextStyle.BODY.wording().clean(about), pages.finish(about, edition));
  }
}
