package shelfful.planning;

import java.util.List;
import java.util.Optional;
import shelfful.geometry.Capsule;
import shelfful.geometry.Pose;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfOutline.FullRound;
import shelfful.kiln.ShelfOutline.HalfPolygon;
import shelfful.kiln.ShelfOutline.HalfRound;
import shelfful.kiln.ShelfOutline.Polygon;
import shelfful.kiln.ShelfOutline.QuarterRound;
import shelfful.kiln.ShelfOutline.Rectangle;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * Two shelves of one kind that lie side by side at one height, as one shelf with a joint across it:
 * bodies may reach over the joint, feet may not stand on it.
 *
 * @param outline of both together, the joint covered
 * @param at the origin of its frame, in the chamber frame; the joint passes through it
 * @param turn of its frame in the chamber
 * @param strip the joint, in its frame
 * @param across whether the joint runs along the frame's y axis, not along its x axis
 */
record TwinShelf(ShelfOutline outline, Point at, Angle turn, Capsule strip, boolean across) {
  private static final int FULL_TURN = 360_000;
  private static final int HALF_TURN = 180_000;
  private static final int QUARTER_TURN = 90_000;

  /** Wider gaps than this, in millimetres, are no joint: the shelves lie apart. */
  private static final double WIDEST_JOINT = 60;

  /** So that touching shelves have a joint, too, millimetres. */
  private static final double NARROWEST_STRIP = 0.001;

  /** How far rectangles may be out of line, millimetres: less than the margin for rounding. */
  private static final double OUT_OF_LINE = 0.002;

  /**
   * The two as one; the first is the one on the side of the frame's positive axis. Empty when they
   * are no halves of one outline or do not lie side by side.
   */
  static Optional<TwinShelf> of(Shelf shelf, ShelfPlace first, ShelfPlace second) {
    int turned = between(first, second);
    ShelfOutline outline = shelf.outline();
    boolean aroundOnePoint = first.at().equals(second.at());
    if (outline instanceof HalfRound half && aroundOnePoint && turned == HALF_TURN) {
      FullRound whole = new FullRound(half.diameter());
      return Optional.of(along(whole, first, half.diameter(), half.sawCut()));
    }
    if (outline instanceof HalfPolygon half
        && aroundOnePoint
        && turned == HALF_TURN
        && half.sides() % 2 == 0) {
      Polygon whole = new Polygon(half.sides(), half.acrossFlats());
      return Optional.of(along(whole, first, half.acrossFlats(), half.sawCut()));
    }
    if (outline instanceof QuarterRound quarter && aroundOnePoint && turned == QUARTER_TURN) {
      HalfRound whole = new HalfRound(quarter.diameter(), quarter.sawCut());
      double radius = quarter.diameter().millimetres() / 2;
      Capsule strip = new Capsule(0, 0, 0, radius, wide(quarter.sawCut().millimetres()));
      return Optional.of(new TwinShelf(whole, first.at(), first.turn(), strip, true));
    }
    if (outline instanceof Rectangle slab && turned % HALF_TURN == 0) {
      return sideBySide(slab, first, second);
    }
    return Optional.empty();
  }

  /** How much further than the first the second is turned, thousandths of a degree, 0 to a turn. */
  private static int between(ShelfPlace first, ShelfPlace second) {
    int turned = second.turn().millidegrees() - first.turn().millidegrees();
    return Math.floorMod(turned, FULL_TURN);
  }

  private static TwinShelf along(ShelfOutline whole, ShelfPlace first, Length size, Length sawCut) {
    double reach = size.millimetres();
    Capsule strip = new Capsule(-reach, 0, reach, 0, wide(sawCut.millimetres()));
    return new TwinShelf(whole, first.at(), first.turn(), strip, false);
  }

  private static double wide(double gap) {
    return Math.max(NARROWEST_STRIP, gap / 2);
  }

  private static Optional<TwinShelf> sideBySide(
      Rectangle slab, ShelfPlace first, ShelfPlace second) {
    double[] away =
        ShelfFrame.of(second).toShelf(first.at().x().millimetres(), first.at().y().millimetres());
    double turn = second.turn().radians();
    boolean across = Math.abs(away[1]) <= OUT_OF_LINE;
    double apart = across ? away[0] : away[1];
    double out = across ? away[1] : away[0];
    Length size = across ? slab.width() : slab.depth();
    double gap = apart - size.millimetres();
    if (Math.abs(out) > OUT_OF_LINE || gap < -OUT_OF_LINE || gap > WIDEST_JOINT) {
      return Optional.empty();
    }
    Length both = Length.ofMillimetres(apart).plus(size);
    Rectangle whole =
        across ? new Rectangle(both, slab.depth()) : new Rectangle(slab.width(), both);
    Pose middle =
        ShelfFrame.of(second).toChamber(Pose.at(across ? apart / 2 : 0, across ? 0 : apart / 2));
    double reach = (across ? slab.depth() : slab.width()).millimetres();
    Capsule strip =
        across
            ? new Capsule(0, -reach, 0, reach, wide(gap))
            : new Capsule(-reach, 0, reach, 0, wide(gap));
    Point at = Point.ofMillimetres(middle.x(), middle.y());
    return Optional.of(new TwinShelf(whole, at, Angle.ofRadians(turn), strip, across));
  }

  /** Where it lies, for these kinds of joined shelf. */
  ShelfPlace place(List<String> shelfIds) {
    return new ShelfPlace(shelfIds, at, turn);
  }
}
