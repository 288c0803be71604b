package shelfful.ui.shelfview;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import shelfful.drawing.Box;
import shelfful.drawing.Sheet;

/**
 * The paper as it is painted: at once, in part, or a little at each frame on a canvas that lies
 * behind the one in sight until it is ready.
 */
final class PaperCanvas {
  private static final double BEHIND = 1;
  private static final Color SHADOW = Color.rgb(60, 45, 35, 0.14);

  private Canvas front = new Canvas();
  private Canvas behind = new Canvas();
  private Optional<SlowPainting> painting = Optional.empty();

  PaperCanvas() {
    behind.setViewOrder(BEHIND);
  }

  List<Node> nodes() {
    return List.of(behind, front);
  }

  void resize(double width, double height) {
    for (Canvas canvas : List.of(front, behind)) {
      canvas.setWidth(width);
      canvas.setHeight(height);
    }
  }

  double width() {
    return front.getWidth();
  }

  double height() {
    return front.getHeight();
  }

  /** Paints sheets at once; nothing without a look at them. */
  void paint(List<Sheet> sheets, Optional<ShelfViewport> seen) {
    painting.ifPresent(SlowPainting::stop);
    painting = Optional.empty();
    GraphicsContext brush = front.getGraphicsContext2D();
    brush.clearRect(0, 0, width(), height());
    seen.ifPresent(
        one -> {
          for (int i = 0; i < sheets.size(); i++) {
            ground(brush, one, sheets.get(i), i);
            brush.save();
            brush.translate(one.screenX(0), one.screenY(one.paper().topOf(i)));
            brush.scale(one.scale(), one.scale());
            CanvasSurface.paint(sheets.get(i).marks(), brush);
            brush.restore();
          }
        });
  }

  /** Nothing but the paper and its shadow. */
  private static void ground(GraphicsContext brush, ShelfViewport seen, Sheet sheet, int index) {
    double x = seen.screenX(0);
    double y = seen.screenY(seen.paper().topOf(index));
    double width = sheet.width() * seen.scale();
    double height = sheet.height() * seen.scale();
    brush.setFill(SHADOW);
    brush.fillRect(x - 1, y - 1, width + 2, height + 3);
    brush.setFill(Color.WHITE);
    brush.fillRect(x, y, width, height);
  }

  /** Paints a part of a sheet again; false while another is being painted, when it cannot be. */
  boolean patch(Sheet sheet, ShelfViewport seen, Box part) {
    if (painting.isEmpty()) {
      new SheetPatch(front.getGraphicsContext2D(), seen, part).paint(sheet);
    }
    return painting.isEmpty();
  }

  /** Paints a sheet a little at each frame, and shows it then. */
  void paintSoon(Sheet sheet, ShelfViewport seen) {
    painting.ifPresent(SlowPainting::stop);
    GraphicsContext brush = behind.getGraphicsContext2D();
    brush.clearRect(0, 0, width(), height());
    ground(brush, seen, sheet, 0);
    painting = Optional.of(new SlowPainting(brush, seen, sheet, this::turnOver));
  }

  private void turnOver() {
    painting = Optional.empty();
    Canvas old = front;
    front = behind;
    behind = old;
    front.setViewOrder(0);
    behind.setViewOrder(BEHIND);
    behind.getGraphicsContext2D().clearRect(0, 0, width(), height());
  }
}
