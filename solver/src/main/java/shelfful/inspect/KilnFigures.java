package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Every figure of a kiln and of a shelf. */
final class KilnFigures {
  private KilnFigures() {}

  static List<Length> lengths(Kiln kiln) {
    List<Length> lengths = new ArrayList<>();
    lengths.add(kiln.chamber().height());
    lengths.add(kiln.chamber().floorPlan().width());
    lengths.add(kiln.chamber().floorPlan().depth());
    for (KeepOut keepOut : kiln.keepOuts()) {
      lengths.addAll(FigureCheck.of(keepOut.from()));
      lengths.addAll(FigureCheck.of(keepOut.to()));
      lengths.addAll(List.of(keepOut.across(), keepOut.top()));
    }
    for (ColumnPlan plan : kiln.columnPlans()) {
      plan.columns().forEach(column -> lengths.addAll(of(column)));
    }
    return lengths;
  }

  private static List<Length> of(Column column) {
    List<Length> lengths = new ArrayList<>();
    for (ShelfPlace place : column.places()) {
      lengths.addAll(FigureCheck.of(place.at()));
    }
    for (Point post : column.posts()) {
      lengths.addAll(FigureCheck.of(post));
    }
    return lengths;
  }

  static List<Length> lengths(Shelf shelf) {
    List<Length> lengths = new ArrayList<>(of(shelf.outline()));
    lengths.add(shelf.thickness());
    return lengths;
  }

  private static List<Length> of(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound full) {
      return List.of(full.diameter());
    }
    if (outline instanceof ShelfOutline.HalfRound half) {
      return List.of(half.diameter());
    }
    if (outline instanceof ShelfOutline.QuarterRound quarter) {
      return List.of(quarter.diameter());
    }
    if (outline instanceof ShelfOutline.Polygon polygon) {
      return List.of(polygon.acrossFlats());
    }
    if (outline instanceof ShelfOutline.HalfPolygon half) {
      return List.of(half.acrossFlats());
    }
    ShelfOutline.Rectangle rectangle = (ShelfOutline.Rectangle) outline;
    return List.of(rectangle.width(), rectangle.depth());
  }
}
