package shelfful.ui.shelfview;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import shelfful.drawing.Box;
import shelfful.drawing.Mark;
import shelfful.drawing.Sheet;

/**
 * A part of a sheet that is painted again: only the marks that reach into it, and nothing outside.
 * The part is widened to whole pixels, so that no seam shows.
 *
 * @param brush of the picture, in pixels
 * @param seen how the sheet lies on the picture
 * @param part of the sheet, in millimetres of paper
 */
record SheetPatch(GraphicsContext brush, ShelfViewport seen, Box part) {

  void paint(Sheet sheet) {
    double left = Math.floor(seen.screenX(part.left())) - 2;
    double top = Math.floor(seen.screenY(part.top())) - 2;
    double width = Math.ceil(seen.screenX(part.right())) + 2 - left;
    double height = Math.ceil(seen.screenY(part.bottom())) + 2 - top;
    Box wide =
        new Box(
            seen.toPaper(left, top).x(),
            seen.toPaper(left, top).y(),
            seen.toPaper(left + width, top + height).x(),
            seen.toPaper(left + width, top + height).y());
    List<Mark> marks =
        sheet.marks().stream().filter(mark -> Covered.by(mark).overlaps(wide)).toList();
    brush.save();
    brush.beginPath();
    brush.rect(left, top, width, height);
    brush.clip();
    brush.translate(seen.screenX(0), seen.screenY(0));
    brush.scale(seen.scale(), seen.scale());
    CanvasSurface.paint(sheet, marks, brush);
    brush.restore();
  }
}
