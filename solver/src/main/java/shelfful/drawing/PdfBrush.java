package shelfful.drawing;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Paints marks on one PDF page, whose origin is at the bottom left and whose unit is the point. */
final class PdfBrush {
  /**
   * The handle of a Bézier quarter circle of radius 1: 4/3 (√2 − 1). It strays 0.03 % from the
   * circle.
   */
  private static final double QUARTER = 0.5522848;

  private final PDPageContentStream content;
  private final double height;
  private final Map<Weight, PDFont> fonts;

  PdfBrush(PDPageContentStream content, double height, Map<Weight, PDFont> fonts) {
    this.content = content;
    this.height = height;
    this.fonts = fonts;
  }

  static float points(double millimetres) {
    return (float) (millimetres / Typeface.MILLIMETRES_PER_POINT);
  }

  private static float x(Spot spot) {
    return points(spot.x());
  }

  private float y(Spot spot) {
    return points(height - spot.y());
  }

  void paint(Mark mark) throws IOException {
    if (mark instanceof Mark.Line line) {
      stroke(line.from(), line.to());
      outline(line.pen());
    } else if (mark instanceof Mark.Path path) {
      trace(path);
      finish(path.closed() ? path.look() : Look.outlined(path.look().outline().orElseThrow()));
    } else if (mark instanceof Mark.Circle circle) {
      oval(circle.centre(), circle.radius(), circle.radius(), 0);
      finish(circle.look());
    } else if (mark instanceof Mark.Oval oval) {
      oval(oval.centre(), oval.halfWidth(), oval.halfDepth(), Math.toRadians(oval.turn()));
      finish(oval.look());
    } else if (mark instanceof Mark.Capsule capsule) {
      capsule(capsule);
      finish(capsule.look());
    } else if (mark instanceof Mark.Hatching hatching) {
      for (Mark.Hatching.Line one : hatching.strokes()) {
        stroke(one.from(), one.to());
      }
      outline(hatching.pen());
    } else {
      text((Mark.Text) mark);
    }
  }

  private void stroke(Spot from, Spot to) throws IOException {
    content.moveTo(x(from), y(from));
    content.lineTo(x(to), y(to));
  }

  private void trace(Mark.Path path) throws IOException {
    List<Spot> corners = path.corners();
    content.moveTo(x(corners.get(0)), y(corners.get(0)));
    for (Spot corner : corners.subList(1, corners.size())) {
      content.lineTo(x(corner), y(corner));
    }
    if (path.closed()) {
      content.closePath();
    }
  }

  /** Four Bézier quarters, anticlockwise from the end of the first half axis. */
  private void oval(Spot centre, double halfWidth, double halfDepth, double turn)
      throws IOException {
    move(local(centre, turn, halfWidth, 0));
    double[][] quarters = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    for (int i = 0; i < 4; i++) {
      double[] here = quarters[i];
      double[] next = quarters[(i + 1) % 4];
      curve(
          local(
              centre,
              turn,
              (here[0] + QUARTER * next[0]) * halfWidth,
              (here[1] + QUARTER * next[1]) * halfDepth),
          local(
              centre,
              turn,
              (next[0] + QUARTER * here[0]) * halfWidth,
              (next[1] + QUARTER * here[1]) * halfDepth),
          local(centre, turn, next[0] * halfWidth, next[1] * halfDepth));
    }
    content.closePath();
  }

  private void capsule(Mark.Capsule capsule) throws IOException {
    double r = capsule.width() / 2;
    double turn =
        Math.atan2(capsule.from().y() - capsule.to().y(), capsule.to().x() - capsule.from().x());
    double k = QUARTER * r;
    Spot from = capsule.from();
    Spot to = capsule.to();
    move(local(from, turn, 0, -r));
    content.lineTo(x(local(to, turn, 0, -r)), y(local(to, turn, 0, -r)));
    curve(local(to, turn, k, -r), local(to, turn, r, -k), local(to, turn, r, 0));
    curve(local(to, turn, r, k), local(to, turn, k, r), local(to, turn, 0, r));
    content.lineTo(x(local(from, turn, 0, r)), y(local(from, turn, 0, r)));
    curve(local(from, turn, -k, r), local(from, turn, -r, k), local(from, turn, -r, 0));
    curve(local(from, turn, -r, -k), local(from, turn, -k, -r), local(from, turn, 0, -r));
    content.closePath();
  }

  /** A place in a frame turned anticlockwise about a centre, its second axis up the paper. */
  private static Spot local(Spot centre, double turn, double along, double up) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return centre.plus(along * cos - up * sin, -(along * sin + up * cos));
  }

  private void move(Spot spot) throws IOException {
    content.moveTo(x(spot), y(spot));
  }

  private void curve(Spot first, Spot second, Spot end) throws IOException {
    content.curveTo(x(first), y(first), x(second), y(second), x(end), y(end));
  }

  private void outline(Pen pen) throws IOException {
    use(pen);
    content.stroke();
  }

  private void use(Pen pen) throws IOException {
    content.setLineWidth(points(pen.width()));
    content.setStrokingColor(colour(pen.ink()));
    float[] dashes = new float[pen.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = points(pen.dashes().get(i));
    }
    content.setLineDashPattern(dashes, 0);
  }

  private void finish(Look look) throws IOException {
    if (look.fill().isPresent()) {
      content.setNonStrokingColor(colour(look.fill().get()));
    }
    if (look.outline().isPresent()) {
      use(look.outline().get());
    }
    if (look.fill().isPresent() && look.outline().isPresent()) {
      content.fillAndStroke();
    } else if (look.fill().isPresent()) {
      content.fill();
    } else {
      content.stroke();
    }
  }

  private void text(Mark.Text text) throws IOException {
    content.beginText();
    content.setFont(fonts.get(text.weight()), (float) text.size());
    content.setNonStrokingColor(colour(text.ink()));
    content.newLineAtOffset(x(text.start()), y(text.start()));
    content.showText(text.words());
    content.endText();
  }

  private static Color colour(Ink ink) {
    return new Color(ink.red(), ink.green(), ink.blue());
  }
}
