package shelfful.drawing;

import java.util.Locale;

/**
 * Paints one sheet as an SVG image in millimetres: no script, nothing fetched from outside, every
 * text escaped. Words carry their measured width, so that a viewer without the typeface keeps them
 * in their place.
 */
public final class SvgSurface {
  private static final String FAMILY = "DejaVu Sans, Verdana, sans-serif";

  private SvgSurface() {}

  /** The whole image as XML text. */
  public static String image(Sheet sheet) {
    StringBuilder svg = new StringBuilder();
    String width = Markup.number(sheet.width(), 3);
    String height = Markup.number(sheet.height(), 3);
    svg.append(
            String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\"",
                width,
                height))
        .append(String.format(Locale.ROOT, " viewBox=\"0 0 %s %s\" fill=\"none\"", width, height))
        .append(" stroke-linecap=\"round\" stroke-linejoin=\"round\" font-family=\"")
        .append(FAMILY)
        .append("\">\n")
        .append("<rect width=\"")
        .append(width)
        .append("\" height=\"")
        .append(height)
        .append("\" fill=\"#ffffff\"/>\n");
    SvgBrush brush = new SvgBrush(SvgBrush.Fineness.PRINT);
    sheet.marks().forEach(mark -> svg.append(brush.element(mark)).append('\n'));
    return svg.append("</svg>\n").toString();
  }

  /**
   * How a sheet stands within a page.
   *
   * @param kind its class
   * @param title told to readers that a picture does not reach
   * @param view the part of the sheet that is shown
   * @param over further SVG over the marks
   */
  record Inline(String kind, String title, Box view, String over) {}

  /** Part of a sheet as an element of an HTML page, as wide as the page lets it be. */
  static String inline(Sheet sheet, Inline inline) {
    Box view = inline.view();
    StringBuilder svg = new StringBuilder("<svg role=\"img\" class=\"");
    svg.append(inline.kind()).append("\" aria-label=\"").append(Markup.text(inline.title()));
    svg.append("\" viewBox=\"").append(Markup.number(view.left(), 2)).append(' ');
    svg.append(Markup.number(view.top(), 2))
        .append(' ')
        .append(Markup.number(view.width(), 2))
        .append(' ');
    svg.append(Markup.number(view.height(), 2)).append("\" fill=\"none\" stroke-linecap=\"round\"");
    svg.append(" stroke-linejoin=\"round\" font-family=\"").append(FAMILY).append("\">\n");
    SvgBrush brush = new SvgBrush(SvgBrush.Fineness.SCREEN);
    sheet.marks().forEach(mark -> svg.append(brush.element(mark)).append('\n'));
    return svg.append(inline.over()).append("</svg>\n").toString();
  }
}
