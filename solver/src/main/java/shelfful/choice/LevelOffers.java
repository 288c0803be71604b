package shelfful.choice;

import java.util.ArrayList;
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

  LevelOffers(OpenLevel level, List<Offer> offers, WorthOfMore more) {
    List<Offer> order = new ArrayList<>(offers);
    order.sort(Comparator.comparingDouble(offer -> -offer.first()));
    int size = order.size();
    layers = new KnownLayer[size];
    takes = new long[size];
    first = new double[size];
    starts = new int[size + 1];
    cells = new int[order.stream().mapToInt(offer -> offer.layer().kinds().length).sum()];
    for (int i = 0; i < size; i++) {
      layers[i] = order.get(i).layer();
      takes[i] = level.takes(layers[i]);
      first[i] = order.get(i).first();
      starts[i + 1] = more.cells(layers[i], cells, starts[i]);
    }
  }

  /** A content and what it adds before any other is chosen. */
  record Offer(KnownLayer layer, double first) {}

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
