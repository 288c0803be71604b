package shelfful.drawing;

import java.util.List;
import java.util.stream.Stream;

/** What a mark covers, its pen included. */
final class Extent {
  private Extent() {}

  static Box of(Mark mark) {
    if (mark instanceof Mark.Text text) {
      return text.box();
    }
    if (mark instanceof Mark.Line line) {
      return round(List.of(line.from(), line.to()), line.pen().width() / 2);
    }
    if (mark instanceof Mark.Path path) {
      return round(path.corners(), pen(path.look()));
    }
    if (mark instanceof Mark.Circle circle) {
      return round(List.of(circle.centre()), circle.radius() + pen(circle.look()));
    }
    if (mark instanceof Mark.Oval oval) {
      double cos = Math.cos(Math.toRadians(oval.turn()));
      double sin = Math.sin(Math.toRadians(oval.turn()));
      double x = Math.hypot(oval.halfWidth() * cos, oval.halfDepth() * sin) + pen(oval.look());
      double y = Math.hypot(oval.halfWidth() * sin, oval.halfDepth() * cos) + pen(oval.look());
      Spot centre = oval.centre();
      return new Box(centre.x() - x, centre.y() - y, centre.x() + x, centre.y() + y);
    }
    if (mark instanceof Mark.Capsule capsule) {
      return round(
          List.of(capsule.from(), capsule.to()), capsule.width() / 2 + pen(capsule.look()));
    }
    Mark.Hatching hatching = (Mark.Hatching) mark;
    List<Spot> ends =
        hatching.strokes().stream().flatMap(one -> Stream.of(one.from(), one.to())).toList();
    return round(ends, hatching.pen().width() / 2);
  }

  private static double pen(Look look) {
    return look.outline().map(pen -> pen.width() / 2).orElse(0.0);
  }

  private static Box round(List<Spot> spots, double margin) {
    return Box.round(spots).inset(-margin);
  }
}
