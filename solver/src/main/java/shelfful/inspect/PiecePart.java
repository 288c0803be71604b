package shelfful.inspect;

import shelfful.measure.Angle;
import shelfful.measure.Point;
import shelfful.ware.Band;
import shelfful.ware.Lug;
import shelfful.ware.Outline;

/**
 * One band or lug of a piece where it stands.
 *
 * @param name for people
 * @param footprint what it covers in the plan
 * @param heights it reaches through
 */
record PiecePart(String name, Footprint footprint, HeightRange heights) {

  static PiecePart of(Band band, Point at, Angle turn, long base) {
    HeightRange heights =
        new HeightRange(base + band.from().micrometres(), base + band.to().micrometres());
    return new PiecePart("body", footprint(band.outline(), at, turn), heights);
  }

  static PiecePart of(Lug lug, Point at, Angle turn, long base) {
    Vector axis = Vector.of(at);
    Vector direction =
        Vector.towards((double) lug.direction().millidegrees() + turn.millidegrees());
    double halfWidth = lug.width().micrometres() / 2.0;
    Vector end = axis.plus(direction.times(lug.reach().micrometres() - halfWidth));
    HeightRange heights =
        new HeightRange(base + lug.from().micrometres(), base + lug.to().micrometres());
    return new PiecePart(lug.name(), new Bar(axis, end, halfWidth), heights);
  }

  /** What an outline covers; an oval with equal axes is a disc. */
  static Footprint footprint(Outline outline, Point at, Angle turn) {
    if (outline.width().equals(outline.depth())) {
      return Disc.at(at, outline.width());
    }
    return new Ellipse(
        Vector.of(at),
        outline.width().micrometres() / 2.0,
        outline.depth().micrometres() / 2.0,
        Vector.towards(turn.millidegrees()));
  }
}
