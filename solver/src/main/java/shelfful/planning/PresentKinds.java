package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import shelfful.packing.BodyKind;
import shelfful.packing.Placed;

/**
 * The kinds that a question is really about: the packer need not look at kinds of which there are
 * none.
 *
 * @param kinds their indices among all kinds, in order
 * @param counts how many of each, by place in {@code kinds}
 * @param placeOf where each of all kinds is in {@code kinds}, or −1
 */
record PresentKinds(int[] kinds, int[] counts, int[] placeOf) {

  static PresentKinds of(int[] allCounts) {
    return of(allCounts, List.of());
  }

  /** Those asked about, and those of the bodies that stand there already. */
  static PresentKinds of(int[] allCounts, List<Placed> fixed) {
    int[] placeOf = new int[allCounts.length];
    int present = 0;
    for (int kind = 0; kind < allCounts.length; kind++) {
      int index = kind;
      boolean stands = !fixed.isEmpty() && fixed.stream().anyMatch(body -> body.kind() == index);
      placeOf[kind] = allCounts[kind] > 0 || stands ? present++ : -1;
    }
    int[] kinds = new int[present];
    int[] counts = new int[present];
    for (int kind = 0; kind < allCounts.length; kind++) {
      if (placeOf[kind] >= 0) {
        kinds[placeOf[kind]] = kind;
        counts[placeOf[kind]] = allCounts[kind];
      }
    }
    return new PresentKinds(kinds, counts, placeOf);
  }

  List<BodyKind> of(List<BodyKind> all) {
    List<BodyKind> present = new ArrayList<>();
    for (int kind : kinds) {
      present.add(all.get(kind));
    }
    return present;
  }

  double[][] of(double[][] all) {
    double[][] present = new double[kinds.length][kinds.length];
    for (int i = 0; i < kinds.length; i++) {
      for (int j = 0; j < kinds.length; j++) {
        present[i][j] = all[kinds[i]][kinds[j]];
      }
    }
    return present;
  }

  /**
   * Bodies by their numbers among all kinds, as the question numbers them; absent kinds are left
   * out.
   */
  List<Placed> ask(List<Placed> bodies) {
    return bodies.stream()
        .filter(body -> placeOf[body.kind()] >= 0)
        .map(body -> new Placed(placeOf[body.kind()], body.pose()))
        .toList();
  }

  /** Bodies as the question numbers them, by their numbers among all kinds. */
  List<Placed> answer(List<Placed> bodies) {
    return bodies.stream().map(body -> new Placed(kinds[body.kind()], body.pose())).toList();
  }
}
