package shelfful.choice;

import java.util.Arrays;
import java.util.List;

/** What so many pieces of a kind are worth, the worthiest first: concave, and flat at the end. */
public final class KindWorth {
  private final double[][] sums;

  /**
   * From the worth of each piece.
   *
   * @param pieces for each kind what each piece is worth, in any order; none negative
   */
  public KindWorth(List<double[]> pieces) {
    sums = new double[pieces.size()][];
    for (int kind = 0; kind < sums.length; kind++) {
      double[] rising = pieces.get(kind).clone();
      Arrays.sort(rising);
      sums[kind] = new double[rising.length + 1];
      for (int i = 0; i < rising.length; i++) {
        sums[kind][i + 1] = sums[kind][i] + rising[rising.length - 1 - i];
      }
    }
  }

  int kinds() {
    return sums.length;
  }

  /** How many pieces there are of a kind. */
  int most(int kind) {
    return sums[kind].length - 1;
  }

  double of(int kind, int count) {
    return sums[kind][Math.min(count, most(kind))];
  }

  double of(int[] counts) {
    double worth = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      worth += of(kind, counts[kind]);
    }
    return worth;
  }

  /** What a content adds when so many of each kind are had. */
  double adds(KnownLayer content, int[] had) {
    int[] kinds = content.kinds();
    int[] each = content.each();
    double more = 0;
    for (int i = 0; i < kinds.length; i++) {
      double[] sum = sums[kinds[i]];
      int from = had[kinds[i]];
      if (from < sum.length - 1) {
        more += sum[Math.min(from + each[i], sum.length - 1)] - sum[from];
      }
    }
    return more;
  }

  /** What a content is worth where nothing else is. */
  double alone(KnownLayer content) {
    return adds(content, new int[sums.length]);
  }

  /** What the worthiest piece is worth; 0 when there is none. */
  double dearest(int kind) {
    return of(kind, 1);
  }

  /**
   * At a price for each piece, how many more are worth buying when so many are had: the buyer's
   * gain is {@code of(result) - of(had) - price * (result - had)}.
   */
  int wanted(int kind, int had, double price) {
    int count = Math.min(had, most(kind));
    while (count < most(kind) && sums[kind][count + 1] - sums[kind][count] > price) {
      count++;
    }
    return count;
  }

  /** The buyer's greatest gain at a price for each kind, when so many are had. */
  double gain(int[] had, double[] prices) {
    double gain = 0;
    for (int kind = 0; kind < had.length; kind++) {
      int from = Math.min(had[kind], most(kind));
      int to = wanted(kind, from, prices[kind]);
      gain += sums[kind][to] - sums[kind][from] - prices[kind] * (to - from);
    }
    return gain;
  }
}
