package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shelfful.load.Layer;
import shelfful.measure.Point;

/**
 * The side a kiln is looked at from: the front, or the right where columns stand one behind
 * another. Seen from the right the front lies at the left.
 *
 * @param fromFront whether x runs across the picture; if not, y does
 */
record SideView(boolean fromFront) {
  /** The side from which the columns of a load hide each other least. */
  static SideView of(Setting setting) {
    double hiddenFromFront = hidden(setting, new SideView(true));
    double hiddenFromRight = hidden(setting, new SideView(false));
    return new SideView(hiddenFromFront <= hiddenFromRight);
  }

  private static double hidden(Setting setting, SideView view) {
    Map<String, List<Point>> columns = new TreeMap<>();
    for (Layer layer : setting.layers()) {
      columns
          .computeIfAbsent(layer.columnId() + "/" + layer.place(), same -> new ArrayList<>())
          .addAll(setting.contour(layer));
    }
    List<List<Point>> outlines = List.copyOf(columns.values());
    double hidden = 0;
    for (int i = 0; i < outlines.size(); i++) {
      for (int j = i + 1; j < outlines.size(); j++) {
        boolean stacked =
            view.across(outlines.get(i)).shared(view.across(outlines.get(j))) > 0
                && view.deep(outlines.get(i)).shared(view.deep(outlines.get(j))) > 0;
        hidden += stacked ? 0 : view.across(outlines.get(i)).shared(view.across(outlines.get(j)));
      }
    }
    return hidden;
  }

  Reach across(List<Point> corners) {
    return fromFront ? Reach.alongX(corners) : Reach.alongY(corners);
  }

  private Reach deep(List<Point> corners) {
    return fromFront ? Reach.alongY(corners) : Reach.alongX(corners);
  }

  /** Where a point lies across the picture, in millimetres of the kiln. */
  double across(Point point) {
    return (fromFront ? point.x() : point.y()).millimetres();
  }

  /** How far from the viewer a point lies. */
  double depth(Point point) {
    return fromFront ? point.y().millimetres() : -point.x().millimetres();
  }

  String words() {
    return fromFront ? "seen from the front" : "seen from the right, the front at the left";
  }
}
