package shelfful.drawing;

import java.util.List;
import shelfful.load.Layer;

/**
 * The phone page's last page: every piece to be marked as good, second or lost while the kiln is
 * unpacked, and the note that takes the marks home. It needs the page's script; without it it is
 * not shown.
 */
final class PhoneUnpacking {
  private static final String GRADES =
      "<option value=\"\">–</option><option>good</option><option>second</option>"
          + "<option>lost</option>";

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;
  private final List<String> causes;

  /**
   * Prepares the page.
   *
   * @param causes offered for what is wrong; any other text may be typed
   */
  PhoneUnpacking(Setting setting, GlazePalette palette, LengthWords words, List<String> causes) {
    this.setting = setting;
    this.palette = palette;
    this.words = words;
    this.causes = causes;
  }

  String section() {
    StringBuilder html =
        new StringBuilder("<section data-page=\"Unpacking\" id=\"unpacking\" hidden=\"hidden\">\n");
    html.append(Markup.element("h2", "Unpacking"));
    html.append(
        Markup.element(
            "p",
            "Mark what is not good, then say what the rest is. At the end take the note home."));
    for (Layer layer : setting.layers()) {
      html.append(Markup.element("h3", layer.id())).append("<ul class=\"out\">\n");
      LayerList.of(setting, palette, words, layer).rows().forEach(row -> html.append(row(row)));
      html.append("</ul>\n");
    }
    return html.append(note()).append("</section>\n").toString();
  }

  private static String row(LayerList.Row piece) {
    return "<li data-out=\""
        + Markup.text(piece.pieceId())
        + "\"><span class=\"what\">"
        + piece.number()
        + " "
        + Markup.name(piece.form() + ", " + piece.glaze())
        + "</span><select aria-label=\"grade\">"
        + GRADES
        + "</select><input type=\"text\" list=\"causes\" maxlength=\"80\" aria-label=\"cause\""
        + " placeholder=\"cause\"/></li>\n";
  }

  private String note() {
    StringBuilder html = new StringBuilder("<p><label>The rest <select id=\"rest\">");
    html.append("<option value=\"\">stays unmarked</option>");
    html.append("<option value=\"good\">is good</option></select></label></p>\n");
    html.append("<datalist id=\"causes\">\n");
    causes.forEach(
        cause -> html.append("<option value=\"").append(Markup.text(cause)).append("\"/>\n"));
    html.append("</datalist>\n").append(Markup.element("h3", "The note"));
    html.append(
        "<textarea id=\"note\" rows=\"8\" readonly=\"readonly\" aria-label=\"the note\"></textarea>\n");
    html.append("<p><button type=\"button\" id=\"copy\">Copy</button> ");
    html.append("<a id=\"save\" download=\"unpacking.txt\">Save as a file</a></p>\n");
    return html.toString();
  }
}
