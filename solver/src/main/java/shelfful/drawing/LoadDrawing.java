package shelfful.drawing;

import java.util.List;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.measure.LengthUnit;

/**
 * The loading sheets of one load: a cover, lists, then a sheet for each layer in the order they are
 * loaded. The same load gives the same marks whatever the machine's language, place or clock.
 *
 * @param title for the document, printable
 * @param sheets in order
 */
public record LoadDrawing(String title, List<Sheet> sheets) {
  /** Takes its own copy. */
  public LoadDrawing {
    sheets = List.copyOf(sheets);
  }

  /**
   * Draws a load.
   *
   * @param load passed by the judge; where it gives no figures for a layer they are left out of
   *     that layer's head
   * @param paper upright
   * @param unit every length is written in
   */
  public static LoadDrawing of(InspectedLoad load, PaperSize paper, LengthUnit unit) {
    Setting setting = new Setting(load);
    GlazePalette palette = new GlazePalette(setting);
    LengthWords words = new LengthWords(unit);
    Pages pages = new Pages(paper);
    List<FetchList.Item> toFetch = new CoverDrawer(setting, palette, words).draw(pages);
    new ListsDrawer(setting, palette, words).draw(pages, toFetch);
    LayerSheetDrawer drawer = new LayerSheetDrawer(setting, palette, words, pages);
    for (Layer layer : setting.layers()) {
      drawer.draw(layer);
    }
    String about = setting.studio().name() + " – " + FiringWords.of(setting);
    return new LoadDrawing(TextStyle.BODY.wording().clean(about), pages.finish(about));
  }
}
