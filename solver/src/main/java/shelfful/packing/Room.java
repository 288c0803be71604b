package shelfful.packing;

import java.util.Objects;
import shelfful.geometry.Region;

/**
 * A convex room that feet or whole bodies must keep inside.
 *
 * @param region in the shelf's frame
 * @param clearance least gap to the region's edge, mm, to which each body's tolerance is added; may
 *     be negative to allow an overhang
 * @param applies whether the foot or the whole body must keep inside
 */
public record Room(Region region, double clearance, Applies applies) {
  /** Refuses a clearance that is not finite. */
  public Room {
    Objects.requireNonNull(region, "region");
    Objects.requireNonNull(applies, "applies");
    if (!Double.isFinite(clearance)) {
      throw new IllegalArgumentException("room clearance must be finite but is " + clearance);
    }
  }
}
