package shelfful.drawing;

import java.util.List;
import shelfful.kiln.ShelfOutline;
import shelfful.load.Layer;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Point;

/**
 * How places on one shelf are told to a person: on a rectangle from its left and front edges, on
 * anything round by the clock and the distance from the centre of the disc or polygon it is, or was
 * cut from.
 */
final class ShelfPositions {
  private static final int RIGHT_ANGLE = 90_000;
  private static final double AT_CENTRE = 0.5;

  private static final Length PITCH = Length.ofMillimetres(50);
  private static final Length INCH_PITCH = Length.ofInches(2);

  private final LengthWords words;
  private final Point centre;
  private final Point corner;
  private final boolean fromEdges;

  ShelfPositions(Setting setting, Layer layer, LengthWords words) {
    List<Point> contour = setting.contour(layer);
    this.words = words;
    this.centre = setting.place(layer).at();
    this.corner = Point.ofMillimetres(Reach.alongX(contour).from(), Reach.alongY(contour).from());
    this.fromEdges =
        setting.shelf(layer).outline() instanceof ShelfOutline.Rectangle
            && setting.place(layer).turn().millidegrees() % RIGHT_ANGLE == 0;
  }

  /** What the two figures are, for the head of the key. */
  String explained() {
    String unit = words.unitWord();
    String lines = "; a light line every " + words.full(pitch());
    return fromEdges
        ? "in the order to set; to its middle from the shelf's left edge and from its front edge, in "
            + unit
            + lines
        : "in the order to set; hour on a clock (12 far, 6 front) and distance from the shelf's"
            + " centre to its middle, in "
            + unit
            + lines;
  }

  /** How far apart the light lines are that places are read off. */
  Length pitch() {
    return words.unit() == LengthUnit.INCHES ? INCH_PITCH : PITCH;
  }

  /** Whether places are told from two edges; if not, by clock and distance. */
  boolean fromEdges() {
    return fromEdges;
  }

  /** What the clock lies about. */
  Point centre() {
    return centre;
  }

  String bare(Length length) {
    return words.bare(length);
  }

  List<String> of(Point at) {
    if (fromEdges) {
      return List.of(words.bare(at.x().minus(corner.x())), words.bare(at.y().minus(corner.y())));
    }
    double right = at.x().minus(centre.x()).millimetres();
    double away = at.y().minus(centre.y()).millimetres();
    double distance = Math.hypot(right, away);
    String hour = distance < AT_CENTRE ? "–" : Clock.towards(right, away);
    return List.of(hour, words.bare(Length.ofMillimetres(distance)));
  }
}
