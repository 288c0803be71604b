package shelfful.ui.studio;

import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import shelfful.drawing.Sheet;
import shelfful.ui.shelfview.CanvasSurface;

/** A picture as large as its room allows, on white paper. */
final class PictureView extends Region {
  private final Canvas canvas = new Canvas();
  private Optional<Sheet> picture = Optional.empty();

  PictureView() {
    getStyleClass().add("picture");
    getChildren().add(canvas);
    setMinSize(120, 80);
    setMaxHeight(USE_PREF_SIZE);
  }

  void show(Optional<Sheet> other) {
    picture = other;
    setVisible(other.isPresent());
    setManaged(other.isPresent());
    requestLayout();
  }

  Optional<Sheet> picture() {
    return picture;
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(Math.floor(Math.max(0, getWidth() - 2)));
    canvas.setHeight(Math.floor(Math.max(0, getHeight() - 2)));
    canvas.relocate(1, 1);
    GraphicsContext brush = canvas.getGraphicsContext2D();
    brush.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    picture.ifPresent(one -> paint(one, brush));
  }

  private void paint(Sheet sheet, GraphicsContext brush) {
    double scale = Math.min(canvas.getWidth() / sheet.width(), canvas.getHeight() / sheet.height());
    if (scale > 0) {
      brush.save();
      brush.translate((canvas.getWidth() - sheet.width() * scale) / 2, 0);
      brush.scale(scale, scale);
      CanvasSurface.paint(sheet, brush);
      brush.restore();
    }
  }
}
