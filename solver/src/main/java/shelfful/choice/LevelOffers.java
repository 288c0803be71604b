package shelfful.choice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The contents that one open level may be given, those worth most at first in front, laid out flat
 * for {@link FewLayersAnew}'s inner loop.
 */
final class LevelOffers {
  final KnownLayer[] layers;

  /** What its level takes with each content, in micrometres. */
  final long[] takes;

  /** What each content adds before any other is chosen: never less than what it adds later. */
  final double[] first;

  /** The cells of {@link WorthOfMore} that content i adds up: from starts[i] to starts[i + 1]. */
  private final int[] starts;

  private final int[] cells;

  LevelOffers(OpenLevel level, List<KnownLayer> known, WorthOfMore more) {
    int size = known.size();
    double[] adds = new double[size];
    Integer[] order = new Integer[size];
    int count = 0;
    for (int i = 0; i < size; i++) {
      order[i] = i;
      adds[i] = more.of(known.get(i));
      count += known.get(i).kinds().length;
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> -adds[i]));
    layers = new KnownLayer[size];
    takes = new long[size];
    first = new double[size];
    starts = new int[size + 1];
    cells = new int[count];
    for (int i = 0; i < size; i++) {
      KnownLayer layer = known.get(order[i]);
      layers[i] = layer;
      takes[i] = level.takes(layer);
      first[i] = adds[order[i]];
      starts[i + 1] = more.cells(layer, cells, starts[i]);
    }
  }

  int size() {
    return first.length;
  }

  /** What a content adds now. */
  double adds(int content, WorthOfMore more) {
    double[] worth = more.cells;
    double sum = 0;
    for (int i = starts[content]; i < starts[content + 1]; i++) {
      sum += worth[cells[i]];
    }
    return sum;
  }

  /** The most that any content adds now; 0 when there is none. */
  double most(WorthOfMore more) {
    double most = 0;
    for (int i = 0; i < first.length && first[i] > most; i++) {
      most = Math.max(most, adds(i, more));
    }
    return most;
  }
}
