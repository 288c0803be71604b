package shelfful.learning;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Keeps the chance of even one false alarm among many comparisons below a level, whatever depends
 * on what. S. Holm, "A simple sequentially rejective multiple test procedure", Scand. J. Stat. 6
 * (1979), 65-70.
 */
final class Holm {
  private Holm() {}

  /** The chances as they are after so many comparisons; a small one may be believed. */
  static double[] adjusted(double[] chances) {
    int[] order =
        IntStream.range(0, chances.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> chances[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] adjusted = new double[chances.length];
    double most = 0;
    for (int rank = 0; rank < order.length; rank++) {
      most = Math.max(most, Math.min(1, (chances.length - rank) * chances[order[rank]]));
      adjusted[order[rank]] = most;
    }
    return adjusted;
  }
}
