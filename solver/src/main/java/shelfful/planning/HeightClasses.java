package shelfful.planning;

import java.util.Arrays;

/** The heights ware comes in, lowest first: a layer is as high as its tallest piece needs. */
final class HeightClasses {
  private final long[] heights;
  private final int[] ofKind;

  HeightClasses(ReadyWare ware) {
    heights = ware.lots().stream().mapToLong(Lot::height).distinct().sorted().toArray();
    ofKind = new int[ware.kinds().size()];
    for (Lot lot : ware.lots()) {
      int index = Arrays.binarySearch(heights, lot.height());
      ofKind[lot.kind().index()] = Math.max(ofKind[lot.kind().index()], index);
    }
  }

  int count() {
    return heights.length;
  }

  /** In micrometres. */
  long height(int index) {
    return heights[index];
  }

  int ofKind(int kind) {
    return ofKind[kind];
  }

  /** The class of the tallest of some kinds; 0 when there are none. */
  int of(int[] kindCounts) {
    int highest = 0;
    for (int kind = 0; kind < kindCounts.length; kind++) {
      highest = kindCounts[kind] > 0 ? Math.max(highest, ofKind[kind]) : highest;
    }
    return highest;
  }
}
