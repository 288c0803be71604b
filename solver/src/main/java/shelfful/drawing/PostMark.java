package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import shelfful.load.StandingPost;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * One post position of a layer.
 *
 * @param label as written on the plan and in the key, for instance {@code P1}
 * @param at its middle, chamber frame
 * @param across of the wider of the two posts, in millimetres
 * @param below lengths of the post that carries the shelf; empty where none does
 * @param above lengths of the post that stands on the shelf; empty where none does
 */
record PostMark(String label, Point at, double across, List<Length> below, List<Length> above) {
  private static final double SAME_PLACE = 1;
  private static final int BEARINGS = 16;
  private static final Look WHITE = Look.filled(Ink.WHITE);

  /**
   * The posts of a layer in the order of the list of carrying posts, those that only stand on it
   * after them.
   */
  static List<PostMark> of(Setting setting, List<StandingPost> under, List<StandingPost> on) {
    List<PostMark> marks = new ArrayList<>();
    List<StandingPost> left = new ArrayList<>(on);
    for (StandingPost post : under) {
      List<StandingPost> over =
          left.stream().filter(other -> isOver(post.at(), other.at())).limit(1).toList();
      left.removeAll(over);
      double across = over.stream().mapToDouble(setting::across).max().orElse(0);
      marks.add(
          new PostMark(
              "P" + (marks.size() + 1),
              post.at(),
              Math.max(across, setting.across(post)),
              setting.lengths(post),
              over.stream().flatMap(other -> setting.lengths(other).stream()).toList()));
    }
    for (StandingPost post : left) {
      marks.add(
          new PostMark(
              "P" + (marks.size() + 1),
              post.at(),
              setting.across(post),
              List.of(),
              setting.lengths(post)));
    }
    return List.copyOf(marks);
  }

  private static boolean isOver(Point below, Point above) {
    double x = above.x().minus(below.x()).millimetres();
    double y = above.y().minus(below.y()).millimetres();
    return Math.hypot(x, y) <= SAME_PLACE;
  }

  /**
   * Whether a post takes up room on the shelf. One that only carries it is hidden by it and drawn
   * dashed.
   */
  boolean standsOnShelf() {
    return !above.isEmpty();
  }

  /**
   * Draws the post and its label.
   *
   * @param bodies boxes of the pieces on the layer: the label of a post under the shelf keeps off
   *     them where it can, and stands on white where it cannot
   */
  void draw(SheetDraft sheet, PlanView view, List<Box> bodies) {
    Spot centre = view.at(at);
    double radius = view.onPaper(across / 2);
    Look look =
        standsOnShelf()
            ? Look.of(Pen.THIN, Ink.DARK)
            : Look.outlined(Pen.dashed(0.3, Ink.MIDDLE, 0.9, 0.9));
    sheet.add(new Mark.Circle(centre, radius, look));
    TextStyle style = standsOnShelf() ? TextStyle.REVERSED : TextStyle.SMALL_STRONG;
    double width = style.wording().width(label);
    boolean inside = Math.hypot(width / 2, 1.2) < radius && sheet.isFree(labelBox(centre, width));
    if (inside && (standsOnShelf() || isClear(labelBox(centre, width), bodies))) {
      sheet.text(centre.plus(0, 1), label, style, Anchor.MIDDLE, width + 1);
    } else {
      besides(sheet, centre, radius, bodies);
    }
  }

  private static Box labelBox(Spot centre, double width) {
    return new Box(
        centre.x() - width / 2, centre.y() - 1.3, centre.x() + width / 2, centre.y() + 1.8);
  }

  private static boolean isClear(Box box, List<Box> bodies) {
    return bodies.stream().noneMatch(box::overlaps);
  }

  /** A label as near the post as there is a place without words, and if possible without ware. */
  private void besides(SheetDraft sheet, Spot centre, double radius, List<Box> bodies) {
    double width = TextStyle.SMALL_STRONG.wording().width(label);
    List<Box> free =
        Stream.concat(Stream.of(centre), round(centre, radius, width))
            .map(spot -> labelBox(spot, width))
            .filter(sheet::isFree)
            .toList();
    Optional<Box> clear = free.stream().filter(box -> isClear(box, bodies)).findFirst();
    clear
        .or(() -> free.stream().findFirst())
        .ifPresent(
            box -> {
              sheet.box(
                  new Box(box.left() - 0.4, box.top(), box.right() + 0.4, box.bottom()), WHITE);
              sheet.text(box.centre().plus(-width / 2, 0.8), label, TextStyle.SMALL_STRONG);
            });
  }

  private static Stream<Spot> round(Spot centre, double radius, double width) {
    return IntStream.range(0, BEARINGS)
        .mapToObj(
            i -> {
              double angle = 2 * Math.PI * i / BEARINGS;
              double out = radius + 0.8;
              return centre.plus(
                  (out + width / 2) * Math.cos(angle), (out + 1.6) * Math.sin(angle));
            });
  }
}
