package shelfful.drawing;

import java.util.Locale;
import java.util.stream.Collectors;

/** Writes marks as SVG elements, every text escaped. */
final class SvgBrush {
  private final Fineness fineness;

  SvgBrush(Fineness fineness) {
    this.fineness = fineness;
  }

  /** How exactly places are written. */
  enum Fineness {
    /** Micrometres of paper, finer than any printer; words keep their measured width. */
    PRINT(3, 3),
    /** A tenth of a pixel on a telephone; words are as wide as its typeface makes them. */
    SCREEN(2, 1);

    private final int decimals;
    private final int hatchDecimals;

    Fineness(int decimals, int hatchDecimals) {
      this.decimals = decimals;
      this.hatchDecimals = hatchDecimals;
    }
  }

  String element(Mark mark) {
    if (mark instanceof Mark.Line line) {
      return filled(
          "<path d=\"M%s L%s\"%s/>", spot(line.from()), spot(line.to()), stroke(line.pen()));
    }
    if (mark instanceof Mark.Path path) {
      String corners = path.corners().stream().map(this::spot).collect(Collectors.joining(" L"));
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
              .map(one -> "M" + end(one.from()) + "L" + end(one.to()))
              .collect(Collectors.joining());
      return filled("<path d=\"%s\"%s/>", strokes, stroke(hatching.pen()));
    }
    return text((Mark.Text) mark);
  }

  private String end(Spot spot) {
    int decimals = fineness.hatchDecimals;
    return Markup.number(spot.x(), decimals) + "," + Markup.number(spot.y(), decimals);
  }

  private String capsule(Mark.Capsule capsule) {
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

  private String text(Mark.Text text) {
    String weight = text.weight() == Weight.BOLD ? " font-weight=\"bold\"" : "";
    boolean kept = fineness == Fineness.PRINT;
    double x = kept ? text.start().x() : text.start().x() + text.width() / 2;
    String width =
        kept
            ? filled(" textLength=\"%s\" lengthAdjust=\"spacingAndGlyphs\"", number(text.width()))
            : " text-anchor=\"middle\"";
    return filled(
        "<text x=\"%s\" y=\"%s\" font-size=\"%s\"%s%s fill=\"%s\">%s</text>",
        number(x),
        number(text.at().y()),
        number(text.size() * Typeface.MILLIMETRES_PER_POINT),
        width,
        weight,
        text.ink().hex(),
        Markup.text(text.words()));
  }

  private String look(Look look) {
    String fill = look.fill().map(ink -> " fill=\"" + ink.hex() + "\"").orElse("");
    return fill + look.outline().map(this::stroke).orElse("");
  }

  private String stroke(Pen pen) {
    String dashes =
        pen.dashes().isEmpty()
            ? ""
            : pen.dashes().stream()
                .map(this::number)
                .collect(Collectors.joining(" ", " stroke-dasharray=\"", "\""));
    return filled(
        " stroke=\"%s\" stroke-width=\"%s\"%s", pen.ink().hex(), number(pen.width()), dashes);
  }

  private String filled(String pattern, Object... parts) {
    return String.format(Locale.ROOT, pattern, parts);
  }

  private String spot(Spot spot) {
    return number(spot.x()) + "," + number(spot.y());
  }

  private String number(double millimetres) {
    return Markup.number(millimetres, fineness.decimals);
  }
}
