package shelfful.packing;

import java.util.HashMap;
import java.util.Map;
import shelfful.geometry.Extent;
import shelfful.geometry.Region;

/** Extents of inner parallels, remembered: many questions ask about the same few shelves. */
final class Extents {
  private static final int MOST = 4096;

  private record Key(Region region, double inset) {}

  private final Map<Key, Extent> known = new HashMap<>();

  /** The region's {@link Region#extent(double)}. */
  Extent of(Region region, double inset) {
    if (known.size() > MOST) {
      known.clear();
    }
    return known.computeIfAbsent(new Key(region, inset), key -> key.region.extent(key.inset));
  }
}
