package shelfful.planning;

import java.util.List;

/**
 * A height that standing posts can have, and how to make it.
 *
 * @param height in micrometres
 * @param across the section, in micrometres
 * @param makings kinds of post by index, one or two of them, single posts first
 */
record PostLength(long height, long across, List<int[]> makings) {
  PostLength {
    makings = List.copyOf(makings);
  }
}
