package shelfful.packing;

import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Shape;

/**
 * Whether one part of a body covers another wherever the body stands, seen from above. A pair of
 * parts need not be looked at when both are covered by parts of a pair that is: its gap is never
 * the smaller one. Leans to no.
 */
final class Dominance {
  private Dominance() {}

  static boolean covers(Shape outer, Shape inner) {
    if (outer.equals(inner)) {
      return true;
    }
    if (outer instanceof Disc disc) {
      return isWithin(inner, disc);
    }
    if (outer instanceof Oval oval) {
      return isWithin(inner, oval);
    }
    return inner instanceof Capsule bar && isWithin(bar, (Capsule) outer);
  }

  private static boolean isWithin(Shape inner, Disc outer) {
    if (inner instanceof Disc disc) {
      double apart = Math.hypot(disc.x() - outer.x(), disc.y() - outer.y());
      return apart + disc.radius() <= outer.radius();
    }
    if (inner instanceof Oval oval) {
      double apart = Math.hypot(oval.x() - outer.x(), oval.y() - outer.y());
      return apart + Math.max(oval.halfLength(), oval.halfWidth()) <= outer.radius();
    }
    Capsule bar = (Capsule) inner;
    double first = Math.hypot(bar.x1() - outer.x(), bar.y1() - outer.y());
    double second = Math.hypot(bar.x2() - outer.x(), bar.y2() - outer.y());
    return Math.max(first, second) + bar.radius() <= outer.radius();
  }

  private static boolean isWithin(Shape inner, Oval outer) {
    if (inner instanceof Disc disc) {
      double apart = Math.hypot(disc.x() - outer.x(), disc.y() - outer.y());
      return apart + disc.radius() <= Math.min(outer.halfLength(), outer.halfWidth());
    }
    return inner instanceof Oval oval
        && oval.x() == outer.x()
        && oval.y() == outer.y()
        && oval.angle() == outer.angle()
        && oval.halfLength() <= outer.halfLength()
        && oval.halfWidth() <= outer.halfWidth();
  }

  private static boolean isWithin(Capsule inner, Capsule outer) {
    return inner.x1() == outer.x1()
        && inner.y1() == outer.y1()
        && inner.x2() == outer.x2()
        && inner.y2() == outer.y2()
        && inner.radius() <= outer.radius();
  }
}
