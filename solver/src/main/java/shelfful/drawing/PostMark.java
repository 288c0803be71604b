package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
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

  void draw(SheetDraft sheet, PlanView view) {
    Spot centre = view.at(at);
    double radius = view.onPaper(across / 2);
    Look look =
        standsOnShelf()
            ? Look.of(Pen.THIN, Ink.DARK)
            : Look.outlined(Pen.dashed(0.3, Ink.MIDDLE, 0.9, 0.9));
    sheet.add(new Mark.Circle(centre, radius, look));
    TextStyle style = standsOnShelf() ? TextStyle.REVERSED : TextStyle.SMALL_STRONG;
    double width = style.wording().width(label);
    Box box =
        new Box(centre.x() - width / 2, centre.y() - 1.3, centre.x() + width / 2, centre.y() + 1.8);
    if (Math.hypot(width / 2, 1.2) < radius && sheet.isFree(box)) {
      sheet.text(centre.plus(0, 1), label, style, Anchor.MIDDLE, width + 1);
    } else {
      besides(sheet, centre, radius, width);
    }
  }

  /** A label next to a post too thin to hold it. */
  private void besides(SheetDraft sheet, Spot centre, double radius, double width) {
    Spot right = centre.plus(radius + 0.6, 1);
    Spot left = centre.plus(-radius - 0.6 - width, 1);
    for (Spot at : List.of(right, left)) {
      if (sheet.isFree(new Box(at.x(), at.y() - 2.3, at.x() + width, at.y() + 0.8))) {
        sheet.text(at, label, TextStyle.SMALL_STRONG);
        return;
      }
    }
  }
}
