package shelfful.drawing;

import java.util.Locale;
import java.util.stream.Collectors;

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
    String width = number(sheet.width());
    String height = number(sheet.height());
    svg.append(
            filled(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\"",
                width, height))
        .append(filled(" viewBox=\"0 0 %s %s\" fill=\"none\"", width, height))
        .append(" stroke-linecap=\"round\" stroke-linejoin=\"round\" font-family=\"")
        .append(FAMILY)
        .append("\">\n")
        .append(filled("<rect width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>\n", width, height));
    sheet.marks().forEach(mark -> svg.append(element(mark)).append('\n'));
    return svg.append("</svg>\n").toString();
  }

  private static String element(Mark mark) {
    if (mark instanceof Mark.Line line) {
      return filled(
          "<path d=\"M%s L%s\"%s/>", spot(line.from()), spot(line.to()), stroke(line.pen()));
    }
    if (mark instanceof Mark.Path path) {
      String corners =
          path.corners().stream().map(SvgSurface::spot).collect(Collectors.joining(" L"));
      return filled("<path d=\"M%s%s\"%s/>", corners, path.closed() ? " Z" : "", look(path.look()));
    }
    if (mark instanceof Mark.Circle circle) {
      return filled(
          "<circle cx=\"%s\" cy=\"%s\" r=\"%s\"%s/>",
          number(circle.centre().x()),
          number(circle.centre().y()),
          number(circle.radius()),
          look(circle.look()));
    }
    if (mark instanceof Mark.Oval oval) {
      return filled(
          "<ellipse rx=\"%s\" ry=\"%s\" transform=\"translate(%s) rotate(%s)\"%s/>",
          number(oval.halfWidth()),
          number(oval.halfDepth()),
          spot(oval.centre()),
          number(-oval.turn()),
          look(oval.look()));
    }
    if (mark instanceof Mark.Capsule capsule) {
      return capsule(capsule);
    }
    if (mark instanceof Mark.Hatching hatching) {
      String strokes =
          hatching.strokes().stream()
              .map(one -> "M" + spot(one.from()) + " L" + spot(one.to()))
              .collect(Collectors.joining(" "));
      return filled("<path d=\"%s\"%s/>", strokes, stroke(hatching.pen()));
    }
    return text((Mark.Text) mark);
  }

  private static String capsule(Mark.Capsule capsule) {
    Spot from = capsule.from();
    double length = from.distanceTo(capsule.to());
    double radius = capsule.width() / 2;
    double turn =
        Math.toDegrees(Math.atan2(capsule.to().y() - from.y(), capsule.to().x() - from.x()));
    return filled(
        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" rx=\"%s\" transform=\"translate(%s) rotate(%s)\"%s/>",
        number(-radius),
        number(-radius),
        number(length + capsule.width()),
        number(capsule.width()),
        number(radius),
        spot(from),
        number(turn),
        look(capsule.look()));
  }

  private static String text(Mark.Text text) {
    String weight = text.weight() == Weight.BOLD ? " font-weight=\"bold\"" : "";
    return filled(
        "<text x=\"%s\" y=\"%s\" font-size=\"%s\" textLength=\"%s\" lengthAdjust=\"spacingAndGlyphs\"%s fill=\"%s\">%s</text>",
        number(text.start().x()),
        number(text.start().y()),
        number(text.size() * Typeface.MILLIMETRES_PER_POINT),
        number(text.width()),
        weight,
        text.ink().hex(),
        escaped(text.words()));
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private static String look(Look look) {
    String fill = look.fill().map(ink -> " fill=\"" + ink.hex() + "\"").orElse("");
    return fill + look.outline().map(SvgSurface::stroke).orElse("");
  }

  private static String stroke(Pen pen) {
    String dashes =
        pen.dashes().isEmpty()
            ? ""
            : pen.dashes().stream()
                .map(SvgSurface::number)
                .collect(Collectors.joining(" ", " stroke-dasharray=\"", "\""));
    return filled(
        " stroke=\"%s\" stroke-width=\"%s\"%s", pen.ink().hex(), number(pen.width()), dashes);
  }

  private static String filled(String pattern, Object... parts) {
    return String.format(Locale.ROOT, pattern, parts);
  }

  private static String spot(Spot spot) {
    return number(spot.x()) + "," + number(spot.y());
  }

  /** Micrometres of paper are finer than any printer. */
  private static String number(double millimetres) {
    return String.format(Locale.ROOT, "%.3f", millimetres);
  }
}
