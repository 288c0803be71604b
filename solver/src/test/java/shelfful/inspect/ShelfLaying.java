package shelfful.inspect;

import shelfful.kiln.ShelfOutline;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Shelves laid at the origin or elsewhere, for geometry tests; micrometres. */
record ShelfLaying(ShelfOutline outline, Point at, Angle turn) {

  static ShelfLaying half(long diameter, long sawCut) {
    return atOrigin(new ShelfOutline.HalfRound(new Length(diameter), new Length(sawCut)));
  }

  static ShelfLaying atOrigin(ShelfOutline outline) {
    return new ShelfLaying(outline, Point.ORIGIN, Angle.ZERO);
  }

  Footprint footprint() {
    return ShelfShape.of(outline).footprint(at, turn);
  }

  Room room() {
    return ShelfShape.of(outline).room(at, turn);
  }

  Vector centroid() {
    return ShelfShape.of(outline).centroid(at, turn);
  }
}
