package shelfful.ui.shelfview;

import java.util.List;
import javafx.animation.AnimationTimer;
import javafx.scene.canvas.GraphicsContext;
import shelfful.drawing.Mark;
import shelfful.drawing.Sheet;

/**
 * Paints a sheet a little at each frame on a canvas that lies behind another. Painted in one go, a
 * full layer would hold up everything else for as long as a dozen frames.
 */
final class SlowPainting extends AnimationTimer {
  /** What is painted at a frame, in lines or so. */
  private static final int SHARE = 700;

  /** What a line of text costs beside a line, as every letter is drawn. */
  private static final int TEXT = 40;

  private final GraphicsContext brush;
  private final ShelfViewport seen;
  private final List<Mark> marks;
  private final Runnable done;
  private int next;

  /**
   * Begins with the next frame.
   *
   * @param brush of the canvas, on which the paper lies already
   * @param done is run when all is painted
   */
  SlowPainting(GraphicsContext brush, ShelfViewport seen, Sheet sheet, Runnable done) {
    this.brush = brush;
    this.seen = seen;
    this.marks = sheet.marks();
    this.done = done;
    start();
  }

  @Override
  public void handle(long now) {
    int from = next;
    int cost = 0;
    while (next < marks.size() && cost < SHARE) {
      cost += cost(marks.get(next));
      next++;
    }
    brush.save();
    brush.translate(seen.screenX(0), seen.screenY(0));
    brush.scale(seen.scale(), seen.scale());
    CanvasSurface.paint(marks.subList(from, next), brush);
    brush.restore();
    if (next == marks.size()) {
      stop();
      done.run();
    }
  }

  private static int cost(Mark mark) {
    if (mark instanceof Mark.Hatching hatching) {
      return hatching.strokes().size();
    }
    if (mark instanceof Mark.Path path) {
      return path.corners().size();
    }
    return TEXT;
  }
}
