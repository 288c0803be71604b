package shelfful.planning;

import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Shape;
import shelfful.packing.BodyKind;
import shelfful.packing.Part;

/** How much of a shelf a body covers, roughly: a guide for the order of filling, never a proof. */
final class FootprintArea {
  private FootprintArea() {}

  /** The widest part's area, and what each bar adds beyond it, in square millimetres. */
  static double of(BodyKind body) {
    double widest = 0;
    double reach = 0;
    for (Part part : body.parts()) {
      if (!(part.shape() instanceof Capsule)) {
        widest = Math.max(widest, part.shape().area());
        reach = Math.max(reach, leastRadius(part.shape()));
      }
    }
    double bars = 0;
    for (Part part : body.parts()) {
      if (part.shape() instanceof Capsule bar) {
        double length = Math.hypot(bar.x2() - bar.x1(), bar.y2() - bar.y1()) + bar.radius();
        bars += Math.max(0, length - reach) * 2 * bar.radius();
      }
    }
    return widest + bars;
  }

  /** How far a body reaches from its axis at most, in millimetres, its foot included. */
  static double reach(BodyKind body) {
    double reach = body.foot().reach();
    for (Part part : body.parts()) {
      reach = Math.max(reach, part.shape().reach());
    }
    return reach;
  }

  private static double leastRadius(Shape shape) {
    return shape instanceof Disc disc
        ? disc.radius()
        : Math.min(((Oval) shape).halfLength(), ((Oval) shape).halfWidth());
  }
}
