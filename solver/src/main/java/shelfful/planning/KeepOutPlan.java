package shelfful.planning;

import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Gap;
import shelfful.geometry.Pose;
import shelfful.kiln.KeepOut;
import shelfful.measure.Point;

/** Keep-outs seen from above. */
final class KeepOutPlan {
  private KeepOutPlan() {}

  /** The plan of a keep-out: a bar with round ends, chamber frame. */
  static Capsule bar(KeepOut keepOut) {
    return new Capsule(
        keepOut.from().x().millimetres(),
        keepOut.from().y().millimetres(),
        keepOut.to().x().millimetres(),
        keepOut.to().y().millimetres(),
        keepOut.across().millimetres() / 2);
  }

  /** Whether a post at a point would stand in a keep-out, seen from above. */
  static boolean standsIn(KeepOut keepOut, Point at, double radius) {
    Disc post = new Disc(at.x().millimetres(), at.y().millimetres(), radius);
    return Gap.between(post, Pose.HERE, bar(keepOut), Pose.HERE) < 0;
  }
}
