package shelfful.ui.shelfview;

import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.WritableImage;
import shelfful.drawing.Ink;
import shelfful.drawing.Sheet;
import shelfful.drawing.Spot;
import shelfful.ui.Screen;

/** A sheet as the canvas paints it, to be looked at pixel by pixel. */
final class PaintedSheet {
  static final double PIXELS_PER_MILLIMETRE = 8;

  private final WritableImage image;

  PaintedSheet(Sheet sheet) {
    image =
        Screen.on(
            () -> {
              Canvas canvas =
                  new Canvas(
                      sheet.width() * PIXELS_PER_MILLIMETRE,
                      sheet.height() * PIXELS_PER_MILLIMETRE);
              GraphicsContext brush = canvas.getGraphicsContext2D();
              brush.scale(PIXELS_PER_MILLIMETRE, PIXELS_PER_MILLIMETRE);
              CanvasSurface.paint(sheet, brush);
              return canvas.snapshot(new SnapshotParameters(), null);
            });
  }

  /** The colour of the pixel at a spot. */
  Ink at(Spot spot) {
    int rgb =
        image
            .getPixelReader()
            .getArgb(
                (int) Math.floor(spot.x() * PIXELS_PER_MILLIMETRE),
                (int) Math.floor(spot.y() * PIXELS_PER_MILLIMETRE));
    return new Ink(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
  }

  /** The first and last x, in millimetres, at which something dark stands between two heights. */
  double[] darkBetween(double top, double bottom) {
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (int y = (int) (top * PIXELS_PER_MILLIMETRE); y < bottom * PIXELS_PER_MILLIMETRE; y++) {
      for (int x = 0; x < (int) image.getWidth(); x++) {
        if ((image.getPixelReader().getArgb(x, y) & 0xff) < 128) {
          first = Math.min(first, x / PIXELS_PER_MILLIMETRE);
          last = Math.max(last, (x + 1) / PIXELS_PER_MILLIMETRE);
        }
      }
    }
    return new double[] {first, last};
  }
}
