package shelfful.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.record.Causes;

/**
 * The load for a telephone in the kiln room: one HTML file with everything in it, which asks for
 * nothing from outside and says so to the browser. A layer at a time, the next piece pointed out,
 * ticks that are kept on the phone under the plan's mark; without script one long list. The
 * pictures are the marks of the sheets.
 *
 * <p>The file is well-formed XML; every name in it is text and nothing else. One load, one sequence
 * of characters.
 */
public final class PhonePage {
  private static final double SIDE_HEIGHT = 100;

  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;
  private final Printing printing;
  private final PlanMark mark;

  private PhonePage(InspectedLoad load, Printing printing) {
    this.setting = new Setting(load);
    this.palette = new GlazePalette(setting);
    this.words = new LengthWords(printing.unit());
    this.printing = printing;
    this.mark = PlanMark.of(load.load());
  }

  /**
   * The whole file.
   *
   * @param printing of which the paper is of no meaning here
   */
  public static String html(InspectedLoad load, Printing printing) {
    return new PhonePage(load, printing).document();
  }

  private String document() {
    String style = resource("phone.css");
    String script = resource("phone.js");
    String allowed =
        "default-src 'none'; style-src '" + hash(style) + "'; script-src '" + hash(script) + "'";
    StringBuilder html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n");
    html.append("<meta charset=\"utf-8\"/>\n");
    html.append("<meta http-equiv=\"Content-Security-Policy\" content=\"").append(allowed);
    html.append(
        "\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    html.append("<meta name=\"color-scheme\" content=\"light dark\"/>\n<title>");
    html.append(Markup.text(setting.studio().name() + " – " + FiringWords.of(setting)));
    html.append("</title>\n<style>").append(style).append("</style>\n</head>\n<body data-plan=\"");
    html.append(
        Markup.text(mark.hash().substring(0, 32) + printing.edition().revision().orElse("")));
    html.append("\" data-mark=\"").append(mark.shortForm());
    html.append("\">\n").append(top()).append(start());
    for (Layer layer : setting.layers()) {
      html.append(new PhoneLayer(setting, palette, words, layer).section());
    }
    html.append(waits());
    html.append(new PhoneUnpacking(setting, palette, words, Causes.USUAL).section());
    html.append(bar());
    return html.append("<script>")
        .append(script)
        .append("</script>\n</body>\n</html>\n")
        .toString();
  }

  private static String top() {
    return """
        <nav id="top" hidden="hidden"><div>
        <button type="button" id="before" aria-label="the page before">‹</button>
        <span class="where"><b id="page"></b><span class="quiet" id="left" aria-live="polite"></span></span>
        <button type="button" id="look">Dark</button>
        </div></nav>
        """;
  }

  private static String bar() {
    return """
        <footer id="bar" hidden="hidden"><div>
        <button type="button" id="undo">Undo</button>
        <button type="button" class="forward" id="forward"><span id="do"></span><small id="how"></small></button>
        <button type="button" id="after" aria-label="the next page">›</button>
        </div></footer>
        """;
  }

  private String start() {
    StringBuilder html = new StringBuilder("<section data-page=\"Start\">\n");
    html.append(Markup.element("h1", setting.studio().name()));
    html.append(Markup.element("p", FiringWords.of(setting)));
    html.append(Markup.element("p", FiringWords.counts(setting)));
    printing.limit().ifPresent(limit -> html.append(Markup.element("p", limit)));
    html.append("<p class=\"quiet\">").append(Markup.name(printing.edition().words(mark)));
    html.append("</p>\n<p class=\"quiet\" id=\"kept\" hidden=\"hidden\">");
    html.append("This browser keeps no ticks: they are lost when the page is closed.</p>\n");
    html.append("<div class=\"cautions\">\n").append(Markup.element("h3", Cautions.TITLE));
    html.append(list(Cautions.LINES)).append("</div>\n");
    html.append(Markup.element("h3", "Fetch"));
    html.append(
        list(
            new FetchList(setting, words)
                .all().stream().map(item -> item.count() + " × " + item.name()).toList()));
    html.append(Markup.element("h3", "Bring"));
    html.append(list(new PickList(setting).kinds().stream().map(this::told).toList()));
    return html.append(side()).append("</section>\n").toString();
  }

  private String told(PickList.Kind kind) {
    GlazeSign sign = palette.of(kind.first());
    String glaze = (sign.letter() + " " + sign.name()).strip();
    return kind.count() + " × " + kind.first().name() + ", " + glaze + ": " + kind.places();
  }

  private String side() {
    KilnSide side = KilnSide.of(setting.inspected(), SIDE_HEIGHT);
    Box whole = new Box(0, 0, side.picture().width(), side.picture().height());
    String title = "The kiln " + side.seen();
    return Markup.element("h3", title)
        + SvgSurface.inline(side.picture(), new SvgSurface.Inline("side", title, whole, ""));
  }

  private String waits() {
    List<LoadLists.Waiting> waiting = LoadLists.waiting(setting);
    if (waiting.isEmpty()) {
      return "";
    }
    StringBuilder html = new StringBuilder("<section data-page=\"What waits\">\n");
    html.append(Markup.element("h2", "What waits, and why"));
    for (LoadLists.Waiting one : waiting) {
      html.append(Markup.element("h3", one.count() + " × " + one.what()));
      html.append(Markup.element("p", one.reason()));
      html.append(one.mend().isEmpty() ? "" : Markup.element("p", "→ " + one.mend()));
    }
    return html.append("</section>\n").toString();
  }

  private static String list(List<String> lines) {
    StringBuilder html = new StringBuilder("<ul>\n");
    lines.forEach(line -> html.append(Markup.element("li", line)));
    return html.append("</ul>\n").toString();
  }

  private static String resource(String name) {
    try (InputStream stream = PhonePage.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("A part of the phone page is missing: " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new UncheckedIOException("A part of the phone page cannot be read: " + name, fault);
    }
  }

  /** As a content security policy names what may run: the SHA-256 of the very text. */
  private static String hash(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] bytes = digest.digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(bytes);
    } catch (NoSuchAlgorithmException lacking) {
      throw new IllegalStateException("Every Java has SHA-256", lacking);
    }
  }
}
