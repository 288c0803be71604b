package shelfful.drawing;

import java.util.List;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Point;
import shelfful.studio.Studio;

/**
 * A kiln's chamber from above, the loader's side at the bottom: the wall, the keep-outs, and the
 * shelves and posts of one of its column plans.
 */
public final class ChamberDrawing {
  private static final double EDGE = 3;
  private static final Pen KEEP_OUT = Pen.solid(0.25, Ink.MIDDLE);
  private static final Look POST = Look.of(Pen.THIN, Ink.grey(205));
  private static final double POST_RADIUS = 19;

  private ChamberDrawing() {}

  /**
   * Draws a kiln; a column higher up is drawn over those it stands on.
   *
   * @param plan whose shelves and posts are shown
   * @param size of the picture in millimetres, each way
   */
  public static Sheet of(Studio studio, Kiln kiln, ColumnPlan plan, double size) {
    List<Point> wall = Contours.of(kiln.chamber().floorPlan());
    double across = Math.max(Reach.alongX(wall).length(), Reach.alongY(wall).length());
    PlanView view = new PlanView(across / (size - 2 * EDGE), new Spot(size / 2, size / 2));
    SheetDraft sheet = new SheetDraft(SheetFormat.upright(PaperSize.A4), List.of());
    sheet.add(new Mark.Path(spots(view, wall), true, Look.of(Pen.WALL, Ink.WHITE)));
    for (Column column : plan.columns()) {
      column.places().forEach(place -> shelf(studio, view, place, sheet));
    }
    for (Column column : plan.columns()) {
      double radius = postRadius(studio);
      for (Point post : column.posts()) {
        sheet.add(new Mark.Circle(view.at(post), view.onPaper(radius), POST));
      }
    }
    for (KeepOut keepOut : kiln.keepOuts()) {
      List<Spot> corners = new Shapes(view).corners(keepOut);
      sheet.add(new Mark.Path(corners, true, Look.of(KEEP_OUT, Ink.WHITE)));
      sheet.add(new Mark.Hatching(Hatch.TIGHT_RISING.strokes(corners), KEEP_OUT));
    }
    return sheet.picture(size, size);
  }

  private static double postRadius(Studio studio) {
    return studio.posts().stream()
        .mapToDouble(post -> post.across().millimetres() / 2)
        .max()
        .orElse(POST_RADIUS);
  }

  private static void shelf(Studio studio, PlanView view, ShelfPlace place, SheetDraft sheet) {
    studio
        .shelf(place.shelfIds().get(0))
        .ifPresent(
            shelf ->
                sheet.add(
                    new Mark.Path(
                        spots(view, Contours.of(shelf.outline(), place)),
                        true,
                        Look.of(Pen.OUTLINE, Ink.grey(246)))));
  }

  private static List<Spot> spots(PlanView view, List<Point> points) {
    return points.stream().map(view::at).toList();
  }
}
