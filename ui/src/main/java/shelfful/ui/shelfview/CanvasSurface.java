package shelfful.ui.shelfview;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import shelfful.drawing.Ink;
import shelfful.drawing.Look;
import shelfful.drawing.Mark;
import shelfful.drawing.Pen;
import shelfful.drawing.Sheet;
import shelfful.drawing.Spot;
import shelfful.drawing.Typeface;
import shelfful.drawing.Weight;

/** Paints sheets on a canvas, in millimetres under whatever transform the canvas has. */
public final class CanvasSurface {
  /** Thinner lines vanish on a screen; in pixels. */
  private static final double THINNEST = 0.6;

  /**
   * Letters are laid out at this size and then scaled, so that words keep the width they were
   * measured with at every zoom.
   */
  private static final double LAID_OUT_AT = 100;

  private static final Map<Weight, Font> FONTS = new EnumMap<>(Weight.class);

  private final GraphicsContext canvas;
  private final double pixel;

  private CanvasSurface(GraphicsContext canvas) {
    this.canvas = canvas;
    this.pixel = 1 / canvas.getTransform().getMxx();
  }

  /** Paints the white paper and every mark on it; leaves the canvas's own settings as they were. */
  public static void paint(Sheet sheet, GraphicsContext canvas) {
    paint(sheet, sheet.marks(), canvas);
  }

  /** Paints the white paper and some of the marks on it. */
  static void paint(Sheet sheet, List<Mark> marks, GraphicsContext canvas) {
    canvas.save();
    canvas.setFill(Color.WHITE);
    canvas.fillRect(0, 0, sheet.width(), sheet.height());
    canvas.restore();
    paint(marks, canvas);
  }

  /** Paints marks over whatever is there; leaves the canvas's own settings as they were. */
  static void paint(List<Mark> marks, GraphicsContext canvas) {
    canvas.save();
    canvas.setLineCap(StrokeLineCap.ROUND);
    canvas.setLineJoin(StrokeLineJoin.ROUND);
    canvas.setTextBaseline(VPos.BASELINE);
    canvas.setTextAlign(TextAlignment.LEFT);
    CanvasSurface surface = new CanvasSurface(canvas);
    marks.forEach(surface::paint);
    canvas.restore();
  }

  private void paint(Mark mark) {
    if (mark instanceof Mark.Line line) {
      use(line.pen());
      canvas.strokeLine(line.from().x(), line.from().y(), line.to().x(), line.to().y());
    } else if (mark instanceof Mark.Path path) {
      path(path);
    } else if (mark instanceof Mark.Circle circle) {
      oval(circle.centre(), circle.radius(), circle.radius(), circle.look());
    } else if (mark instanceof Mark.Oval oval) {
      canvas.save();
      canvas.translate(oval.centre().x(), oval.centre().y());
      canvas.rotate(-oval.turn());
      oval(new Spot(0, 0), oval.halfWidth(), oval.halfDepth(), oval.look());
      canvas.restore();
    } else if (mark instanceof Mark.Capsule capsule) {
      capsule(capsule);
    } else if (mark instanceof Mark.Hatching hatching) {
      hatching(hatching);
    } else {
      text((Mark.Text) mark);
    }
  }

  private void path(Mark.Path path) {
    canvas.beginPath();
    Spot first = path.corners().get(0);
    canvas.moveTo(first.x(), first.y());
    path.corners().stream().skip(1).forEach(corner -> canvas.lineTo(corner.x(), corner.y()));
    if (path.closed()) {
      canvas.closePath();
      painted(path.look(), canvas::fill, canvas::stroke);
    } else {
      path.look().outline().ifPresent(this::use);
      canvas.stroke();
    }
  }

  private void oval(Spot centre, double halfWidth, double halfDepth, Look look) {
    double left = centre.x() - halfWidth;
    double top = centre.y() - halfDepth;
    painted(
        look,
        () -> canvas.fillOval(left, top, 2 * halfWidth, 2 * halfDepth),
        () -> canvas.strokeOval(left, top, 2 * halfWidth, 2 * halfDepth));
  }

  private void capsule(Mark.Capsule capsule) {
    Spot from = capsule.from();
    double right = capsule.to().x() - from.x();
    double down = capsule.to().y() - from.y();
    double width = capsule.width();
    double length = Math.hypot(right, down) + width;
    canvas.save();
    canvas.translate(from.x(), from.y());
    canvas.rotate(Math.toDegrees(Math.atan2(down, right)));
    painted(
        capsule.look(),
        () -> canvas.fillRoundRect(-width / 2, -width / 2, length, width, width, width),
        () -> canvas.strokeRoundRect(-width / 2, -width / 2, length, width, width, width));
    canvas.restore();
  }

  private void hatching(Mark.Hatching hatching) {
    use(hatching.pen());
    canvas.beginPath();
    for (Mark.Hatching.Line stroke : hatching.strokes()) {
      canvas.moveTo(stroke.from().x(), stroke.from().y());
      canvas.lineTo(stroke.to().x(), stroke.to().y());
    }
    canvas.stroke();
  }

  private void text(Mark.Text text) {
    double scale = text.size() * Typeface.MILLIMETRES_PER_POINT / LAID_OUT_AT;
    canvas.save();
    canvas.translate(text.start().x(), text.start().y());
    canvas.scale(scale, scale);
    canvas.setFont(FONTS.computeIfAbsent(text.weight(), CanvasSurface::load));
    canvas.setFill(colour(text.ink()));
    canvas.fillText(text.words(), 0, 0);
    canvas.restore();
  }

  private void painted(Look look, Runnable fill, Runnable stroke) {
    look.fill()
        .ifPresent(
            ink -> {
              canvas.setFill(colour(ink));
              fill.run();
            });
    look.outline()
        .ifPresent(
            pen -> {
              use(pen);
              stroke.run();
            });
  }

  private void use(Pen pen) {
    canvas.setStroke(colour(pen.ink()));
    canvas.setLineWidth(Math.max(pen.width(), THINNEST * pixel));
    canvas.setLineDashes(pen.dashes().stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static Color colour(Ink ink) {
    return Color.rgb(ink.red(), ink.green(), ink.blue());
  }

  /** Makes the sheets' typeface known to the whole window, also on systems without fonts. */
  public static void loadTypeface() {
    for (Weight weight : Weight.values()) {
      FONTS.computeIfAbsent(weight, CanvasSurface::load);
    }
  }

  private static Font load(Weight weight) {
    try (InputStream file = Typeface.file(weight)) {
      return Font.loadFont(file, LAID_OUT_AT);
    } catch (IOException fault) {
      throw new UncheckedIOException("The bundled typeface cannot be read", fault);
    }
  }
}
