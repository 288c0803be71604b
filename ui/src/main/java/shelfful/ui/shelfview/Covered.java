package shelfful.ui.shelfview;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import shelfful.drawing.Box;
import shelfful.drawing.Look;
import shelfful.drawing.Mark;
import shelfful.drawing.Pen;
import shelfful.drawing.Spot;

/** What marks cover on their sheet, in millimetres of paper, with the width of their pens. */
final class Covered {
  private Covered() {}

  /** The box round all marks; empty without any. */
  static Optional<Box> by(List<Mark> marks) {
    return marks.stream().map(Covered::by).reduce(Covered::both);
  }

  /** The box round all that one list has and the other has not; empty where they are alike. */
  static Optional<Box> byDifference(List<Mark> one, List<Mark> other) {
    Set<Mark> before = new HashSet<>(one);
    Set<Mark> after = new HashSet<>(other);
    return Stream.concat(
            one.stream().filter(mark -> !after.contains(mark)),
            other.stream().filter(mark -> !before.contains(mark)))
        .map(Covered::by)
        .reduce(Covered::both);
  }

  /** The box round two. */
  static Box both(Box one, Box other) {
    return new Box(
        Math.min(one.left(), other.left()),
        Math.min(one.top(), other.top()),
        Math.max(one.right(), other.right()),
        Math.max(one.bottom(), other.bottom()));
  }

  /** The box round a mark. */
  static Box by(Mark mark) {
    if (mark instanceof Mark.Line line) {
      return wider(round(Stream.of(line.from(), line.to())), line.pen().width() / 2);
    } else if (mark instanceof Mark.Path path) {
      return wider(round(path.corners().stream()), pen(path.look()));
    } else if (mark instanceof Mark.Circle circle) {
      return about(circle.centre(), circle.radius() + pen(circle.look()));
    } else if (mark instanceof Mark.Oval oval) {
      double reach = Math.max(oval.halfWidth(), oval.halfDepth());
      return about(oval.centre(), reach + pen(oval.look()));
    } else if (mark instanceof Mark.Capsule capsule) {
      Box middle = round(Stream.of(capsule.from(), capsule.to()));
      return wider(middle, capsule.width() / 2 + pen(capsule.look()));
    } else if (mark instanceof Mark.Hatching hatching) {
      Stream<Spot> ends =
          hatching.strokes().stream().flatMap(line -> Stream.of(line.from(), line.to()));
      return wider(round(ends), hatching.pen().width() / 2);
    }
    Mark.Text text = (Mark.Text) mark;
    // Accents reach higher than letters, and slanted ones beyond the measured width.
    return wider(text.box(), text.box().height() / 3);
  }

  private static double pen(Look look) {
    return look.outline().map(Pen::width).orElse(0.0);
  }

  private static Box about(Spot centre, double half) {
    return wider(new Box(centre.x(), centre.y(), centre.x(), centre.y()), half);
  }

  private static Box wider(Box box, double by) {
    return new Box(box.left() - by, box.top() - by, box.right() + by, box.bottom() + by);
  }

  private static Box round(Stream<Spot> spots) {
    List<Spot> all = spots.toList();
    return new Box(
        least(all, Spot::x),
        least(all, Spot::y),
        -least(all, spot -> -spot.x()),
        -least(all, spot -> -spot.y()));
  }

  private static double least(List<Spot> spots, Function<Spot, Double> part) {
    return spots.stream().mapToDouble(part::apply).min().orElse(0);
  }
}
