package shelfful.ui.shelfview;

import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Paints what lies over the paper: the piece in the hand, the nearest distance, the ring. */
final class OverlayPainter {
  private static final Color RING = Color.rgb(179, 71, 29);
  private static final Color WARNING = Color.rgb(150, 20, 10);
  private static final Color LINE = Color.rgb(20, 20, 20);
  private static final double RING_WIDTH = 3;
  private static final double LINE_WIDTH = 2.5;
  private static final double CASING = 5.5;
  private static final double TICK = 6;

  /** Shares of the letters' size. */
  private static final double PADDING = 0.36;

  private static final double AWAY = 2.1;

  private final GraphicsContext brush;
  private final ShelfViewport seen;
  private final Canvas canvas;
  private final Font font;

  /**
   * A painter for one look through a window.
   *
   * @param letters the size of a figure's letters, in pixels
   */
  OverlayPainter(Canvas canvas, ShelfViewport seen, double letters) {
    this.font = Font.font("DejaVu Sans", FontWeight.BOLD, letters);
    this.canvas = canvas;
    this.brush = canvas.getGraphicsContext2D();
    this.seen = seen;
  }

  void marks(Overlay overlay) {
    brush.save();
    brush.translate(seen.screenX(0), seen.screenY(0));
    brush.scale(seen.scale(), seen.scale());
    CanvasSurface.paint(overlay.marks(), brush);
    brush.restore();
    overlay.measure().ifPresent(this::measure);
  }

  void ring(ShelfView.Ring ring) {
    double radius = ring.radius() * seen.scale() + RING_WIDTH;
    double x = seen.screenX(ring.at().x());
    double y = seen.screenY(ring.at().y());
    brush.setStroke(RING);
    brush.setLineWidth(RING_WIDTH);
    brush.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private void measure(Overlay.Measure measure) {
    double fromX = seen.screenX(measure.from().x());
    double fromY = seen.screenY(measure.from().y());
    double toX = seen.screenX(measure.to().x());
    double toY = seen.screenY(measure.to().y());
    Color colour = measure.forbidden() ? WARNING : LINE;
    line(fromX, fromY, toX, toY, Color.WHITE, CASING);
    line(fromX, fromY, toX, toY, colour, LINE_WIDTH);
    double length = Math.hypot(toX - fromX, toY - fromY);
    double acrossX = length > 0 ? -(toY - fromY) / length : 0;
    double acrossY = length > 0 ? (toX - fromX) / length : 1;
    tick(fromX, fromY, acrossX * TICK, acrossY * TICK, colour);
    tick(toX, toY, acrossX * TICK, acrossY * TICK, colour);
    double away = AWAY * font.getSize();
    label(measure, (fromX + toX) / 2 + acrossX * away, (fromY + toY) / 2 + acrossY * away);
  }

  private void tick(double x, double y, double right, double down, Color colour) {
    line(x - right, y - down, x + right, y + down, colour, LINE_WIDTH);
  }

  private void line(
      double fromX, double fromY, double toX, double toY, Color colour, double width) {
    brush.setLineDashes();
    brush.setStroke(colour);
    brush.setLineWidth(width);
    brush.strokeLine(fromX, fromY, toX, toY);
  }

  /** The figure in a box, inside of the picture; what is forbidden has a black box and a cross. */
  private void label(Overlay.Measure measure, double x, double y) {
    String words = measure.forbidden() ? "✕ " + measure.figure() : measure.figure();
    Text laid = new Text(words);
    laid.setFont(font);
    double padding = PADDING * font.getSize();
    double width = laid.getLayoutBounds().getWidth() + 2 * padding;
    double height = laid.getLayoutBounds().getHeight() + padding;
    double left = Math.max(2, Math.min(canvas.getWidth() - width - 2, x - width / 2));
    double top = Math.max(2, Math.min(canvas.getHeight() - height - 2, y - height / 2));
    brush.setFill(measure.forbidden() ? WARNING : Color.WHITE);
    brush.fillRect(left, top, width, height);
    brush.setStroke(measure.forbidden() ? Color.WHITE : LINE);
    brush.setLineWidth(1.5);
    brush.strokeRect(left, top, width, height);
    brush.setFill(measure.forbidden() ? Color.WHITE : LINE);
    brush.setFont(font);
    brush.setTextAlign(TextAlignment.CENTER);
    brush.setTextBaseline(VPos.CENTER);
    brush.fillText(words, left + width / 2, top + height / 2);
  }
}
