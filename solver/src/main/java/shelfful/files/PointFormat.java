package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import shelfful.measure.Point;
import shelfful.measure.TextReading;

/** A place in the plan as a list of two lengths, x and y. */
final class PointFormat {
  private PointFormat() {}

  static TextReading<Point> read(JsonNode node) {
    if (!node.isArray() || node.size() != 2) {
      return FileNumber.refused(
          node, "is not a place in the plan.", "Write x and y as [120, -45].");
    }
    return FileValue.length(node.get(0), LengthRange.PLACE)
        .then(
            x ->
                FileValue.length(node.get(1), LengthRange.PLACE)
                    .then(y -> new TextReading.Understood<>(new Point(x, y))));
  }
}
