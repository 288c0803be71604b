package shelfful.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which parts of two kinds can come near each other: the same in every question about them, so each
 * pair is worked out once. Kinds are told apart by identity.
 */
final class KindPairs {
  private final Map<BodyKind, Map<BodyKind, Parts>> known = new IdentityHashMap<>();

  /**
   * The parts of two kinds that share heights.
   *
   * @param nearest a part of the first kind, then one of the second, and so on: those that no other
   *     pair covers
   * @param widest the greatest sum of two such parts' outer radii, mm; negative when there are none
   */
  record Parts(int[] nearest, double widest) {
    boolean none() {
      return widest < 0;
    }
  }

  Parts of(BodyKind first, BodyKind second) {
    return known
        .computeIfAbsent(first, any -> new IdentityHashMap<>())
        .computeIfAbsent(second, any -> sharingHeights(first.parts(), second.parts()));
  }

  private static Parts sharingHeights(List<Part> first, List<Part> second) {
    List<int[]> pairs = new ArrayList<>();
    double widest = -1;
    for (int a = 0; a < first.size(); a++) {
      for (int b = 0; b < second.size(); b++) {
        if (first.get(a).sharesHeightWith(second.get(b).from(), second.get(b).to())) {
          pairs.add(new int[] {a, b});
          double radii = first.get(a).shape().outerRadius() + second.get(b).shape().outerRadius();
          widest = Math.max(widest, radii);
        }
      }
    }
    return new Parts(notCovered(first, second, pairs), widest);
  }

  /** The pairs that can be the nearest: those not covered by another pair of the list. */
  private static int[] notCovered(List<Part> first, List<Part> second, List<int[]> pairs) {
    List<int[]> kept = new ArrayList<>();
    for (int p = 0; p < pairs.size(); p++) {
      boolean covered = false;
      for (int q = 0; q < pairs.size() && !covered; q++) {
        boolean covers = covers(first, second, pairs.get(q), pairs.get(p));
        boolean mutual = covers && covers(first, second, pairs.get(p), pairs.get(q));
        covered = covers && p != q && (!mutual || q < p);
      }
      if (!covered) {
        kept.add(pairs.get(p));
      }
    }
    return kept.stream().flatMapToInt(Arrays::stream).toArray();
  }

  private static boolean covers(List<Part> first, List<Part> second, int[] outer, int[] inner) {
    return Dominance.covers(first.get(outer[0]).shape(), first.get(inner[0]).shape())
        && Dominance.covers(second.get(outer[1]).shape(), second.get(inner[1]).shape());
  }
}
