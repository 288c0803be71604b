package shelfful.planning;

import java.util.List;
import java.util.OptionalLong;
import shelfful.geometry.Capsule;
import shelfful.packing.Placed;

/**
 * The joint of two shelves asked about as one. Feet keep off it; each of the two carries what
 * stands on its side.
 *
 * @param strip in the frame of the joined shelf
 * @param across whether it runs along that frame's y axis, not along its x axis
 * @param gramsEach the most that either of the two may carry; empty when unknown
 */
record Joint(Capsule strip, boolean across, OptionalLong gramsEach) {

  /** Whether a place in the joined shelf's frame is on the first shelf's side. */
  boolean isOnFirst(double x, double y) {
    return (across ? x : y) > 0;
  }

  /**
   * Whether neither shelf carries more than it may.
   *
   * @param grams of one body by kind
   */
  boolean carries(List<Placed> bodies, long[] grams) {
    if (gramsEach.isEmpty()) {
      return true;
    }
    long first = 0;
    long second = 0;
    for (Placed body : bodies) {
      if (isOnFirst(body.pose().x(), body.pose().y())) {
        first += grams[body.kind()];
      } else {
        second += grams[body.kind()];
      }
    }
    return Math.max(first, second) <= gramsEach.getAsLong();
  }
}
