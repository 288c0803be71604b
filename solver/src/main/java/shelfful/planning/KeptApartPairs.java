package shelfful.planning;

import java.util.List;
import java.util.Optional;
import shelfful.load.LoadRequest;
import shelfful.ware.FiringKind;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;

/** Which lots may not share a firing or a layer because of their glazes. */
final class KeptApartPairs {
  private final boolean[][] firing;
  private final boolean[][] layer;

  KeptApartPairs(LoadRequest request, List<Lot> lots) {
    firing = new boolean[lots.size()][lots.size()];
    layer = new boolean[lots.size()][lots.size()];
    if (request.firing().kind() == FiringKind.BISQUE) {
      return;
    }
    for (KeptApart rule : request.studio().rules().keptApart()) {
      boolean[][] table = rule.apartness() == Apartness.NOT_IN_ONE_FIRING ? firing : layer;
      if (rule.apartness() != Apartness.BY_DISTANCE) {
        mark(table, rule, lots);
      }
    }
  }

  private static void mark(boolean[][] table, KeptApart rule, List<Lot> lots) {
    for (Lot a : lots) {
      for (Lot b : lots) {
        Optional<String> one = a.glazeId();
        Optional<String> other = b.glazeId();
        if (one.isPresent() && other.isPresent() && rule.isAbout(one.get(), other.get())) {
          table[a.index()][b.index()] = true;
        }
      }
    }
  }

  /** Whether a lot may not be in one firing with any of those that are in. */
  boolean clashesInFiring(int lot, int[] in) {
    return clashes(firing[lot], in);
  }

  /** Whether a lot may not be on one layer with any of those on it. */
  boolean clashesOnLayer(int lot, int[] on) {
    return clashes(layer[lot], on);
  }

  boolean onLayer(int lot, int other) {
    return layer[lot][other];
  }

  boolean inFiring(int lot, int other) {
    return firing[lot][other];
  }

  int pairsInFiring(int[] in) {
    return pairs(firing, in);
  }

  int pairsOnLayer(int[] on) {
    return pairs(layer, on);
  }

  private static boolean clashes(boolean[] row, int[] counts) {
    for (int other = 0; other < row.length; other++) {
      if (row[other] && counts[other] > 0) {
        return true;
      }
    }
    return false;
  }

  private static int pairs(boolean[][] table, int[] counts) {
    int pairs = 0;
    for (int a = 0; a < counts.length; a++) {
      for (int b = a + 1; b < counts.length; b++) {
        pairs += table[a][b] && counts[a] > 0 && counts[b] > 0 ? 1 : 0;
      }
    }
    return pairs;
  }
}
