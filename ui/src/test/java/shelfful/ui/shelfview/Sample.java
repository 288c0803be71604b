package shelfful.ui.shelfview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.drawing.Ink;
import shelfful.drawing.Look;
import shelfful.drawing.Mark;
import shelfful.drawing.Sheet;
import shelfful.drawing.Spot;

/**
 * A spot of a sheet and the colour that must be there, worked out from the display list alone:
 * spots on outlines wide enough to cover a pixel and in the middle of fillings, unless a later mark
 * could lie over them.
 */
record Sample(Mark mark, Spot spot, Ink ink) {
  /** Two pixels of the painted sheet: one is then covered whole, wherever the line lies. */
  private static final double WIDE_ENOUGH = 3 / PaintedSheet.PIXELS_PER_MILLIMETRE;

  static List<Sample> of(Sheet sheet) {
    List<Sample> samples = new ArrayList<>();
    List<Mark> marks = sheet.marks();
    for (int i = 0; i < marks.size(); i++) {
      List<Mark> later = marks.subList(i + 1, marks.size());
      wanted(marks.get(i)).stream()
          .filter(sample -> later.stream().noneMatch(mark -> mayCover(mark, sample.spot)))
          .forEach(samples::add);
    }
    return samples;
  }

  private static List<Sample> wanted(Mark mark) {
    if (mark instanceof Mark.Line line && line.pen().width() >= WIDE_ENOUGH) {
      Spot middle = middle(line.from(), line.to());
      return List.of(new Sample(mark, middle, line.pen().ink()));
    }
    if (mark instanceof Mark.Circle circle) {
      return around(mark, circle.centre(), circle.radius(), circle.radius(), 0, circle.look());
    }
    if (mark instanceof Mark.Oval oval) {
      return around(
          mark, oval.centre(), oval.halfWidth(), oval.halfDepth(), oval.turn(), oval.look());
    }
    if (mark instanceof Mark.Path path && path.look().outline().isPresent()) {
      Spot middle = middle(path.corners().get(0), path.corners().get(1));
      return outline(path.look()).map(ink -> new Sample(mark, middle, ink)).stream().toList();
    }
    if (mark instanceof Mark.Capsule capsule) {
      Spot middle = middle(capsule.from(), capsule.to());
      return capsule.look().fill().map(ink -> new Sample(mark, middle, ink)).stream().toList();
    }
    return List.of();
  }

  /** Anticlockwise on paper means towards smaller y, since y runs down. */
  private static List<Sample> around(
      Mark mark, Spot centre, double halfWidth, double halfDepth, double turn, Look look) {
    List<Sample> samples = new ArrayList<>();
    look.fill().ifPresent(ink -> samples.add(new Sample(mark, centre, ink)));
    double cos = Math.cos(Math.toRadians(turn));
    double sin = Math.sin(Math.toRadians(turn));
    Spot far = new Spot(centre.x() + halfWidth * cos, centre.y() - halfWidth * sin);
    Spot side = new Spot(centre.x() - halfDepth * sin, centre.y() - halfDepth * cos);
    outline(look)
        .ifPresent(
            ink -> {
              samples.add(new Sample(mark, far, ink));
              samples.add(new Sample(mark, side, ink));
            });
    return samples;
  }

  private static Optional<Ink> outline(Look look) {
    return look.outline()
        .filter(pen -> pen.width() >= WIDE_ENOUGH && pen.dashes().isEmpty())
        .map(pen -> pen.ink());
  }

  private static Spot middle(Spot from, Spot to) {
    return new Spot((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
  }

  private static boolean mayCover(Mark mark, Spot spot) {
    return extent(mark).stream()
            .anyMatch(part -> Math.hypot(spot.x() - part[0], spot.y() - part[1]) <= part[2])
        || mark instanceof Mark.Path path && isWithin(path, spot)
        || mark instanceof Mark.Text text && isWithin(text, spot);
  }

  /** Discs (x, y, radius) that hold all of a mark but paths and words. */
  private static List<double[]> extent(Mark mark) {
    if (mark instanceof Mark.Line line) {
      return List.of(disc(line.from(), line.to(), line.pen().width()));
    }
    if (mark instanceof Mark.Circle circle) {
      return List.of(disc(circle.centre(), circle.centre(), circle.radius() + 1));
    }
    if (mark instanceof Mark.Oval oval) {
      double reach = Math.max(oval.halfWidth(), oval.halfDepth()) + 1;
      return List.of(disc(oval.centre(), oval.centre(), reach));
    }
    if (mark instanceof Mark.Capsule capsule) {
      return List.of(disc(capsule.from(), capsule.to(), capsule.width() / 2 + 1));
    }
    if (mark instanceof Mark.Hatching hatching) {
      return hatching.strokes().stream().map(one -> disc(one.from(), one.to(), 0.5)).toList();
    }
    return List.of();
  }

  private static double[] disc(Spot from, Spot to, double edge) {
    Spot middle = middle(from, to);
    double half = Math.hypot(to.x() - from.x(), to.y() - from.y()) / 2;
    return new double[] {middle.x(), middle.y(), half + edge};
  }

  private static boolean isWithin(Mark.Path path, Spot spot) {
    List<Spot> corners = path.corners();
    return spot.x() >= corners.stream().mapToDouble(Spot::x).min().orElseThrow() - 1
        && spot.x() <= corners.stream().mapToDouble(Spot::x).max().orElseThrow() + 1
        && spot.y() >= corners.stream().mapToDouble(Spot::y).min().orElseThrow() - 1
        && spot.y() <= corners.stream().mapToDouble(Spot::y).max().orElseThrow() + 1;
  }

  private static boolean isWithin(Mark.Text text, Spot spot) {
    return spot.x() >= text.box().left() - 0.5
        && spot.x() <= text.box().right() + 0.5
        && spot.y() >= text.box().top() - 0.5
        && spot.y() <= text.box().bottom() + 0.5;
  }
}
