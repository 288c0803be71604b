package shelfful.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The ways of making a content dearer by taking out up to two pieces and putting in one or two
 * others, those first that gain most beyond what the room they take is worth.
 */
final class Exchanges {
  private static final int NONE = -1;

  private final int[] counts;
  private final boolean[] mayCome;
  private final int[] most;
  private final double[] prices;
  private final double[] room;
  private final double roomPrice;
  private final List<Exchange> found = new ArrayList<>();

  /**
   * @param counts by kind in the content
   * @param mayCome by kind whether one more may come
   * @param most by kind how many there are
   * @param prices by kind
   * @param room by kind what a piece takes
   */
  Exchanges(int[] counts, boolean[] mayCome, int[] most, double[] prices, double[] room) {
    this.counts = counts;
    this.mayCome = mayCome;
    this.most = most;
    this.prices = prices;
    this.room = room;
    double price = 0;
    double taken = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      price += counts[kind] * prices[kind];
      taken += counts[kind] * room[kind];
    }
    this.roomPrice = taken > 0 ? price / taken : 0;
  }

  private record Exchange(int out, int alsoOut, int in, int alsoIn, double gain) {}

  /** The contents that result, so many at most. */
  List<int[]> bestFirst(int atMost) {
    for (int out = NONE; out < counts.length; out++) {
      if (out == NONE || counts[out] > 0) {
        comeIn(out, NONE);
        for (int also = out; out != NONE && also < counts.length; also++) {
          if (counts[also] > (also == out ? 1 : 0)) {
            comeIn(out, also);
          }
        }
      }
    }
    return found.stream()
        .sorted(Comparator.comparingDouble(exchange -> -exchange.gain()))
        .limit(atMost)
        .map(this::content)
        .toList();
  }

  private void comeIn(int out, int alsoOut) {
    for (int in = 0; in < counts.length; in++) {
      if (mayCome[in] && in != out && in != alsoOut) {
        offer(out, alsoOut, in, NONE);
        for (int also = in; also < counts.length; also++) {
          boolean enough = also != in || counts[in] + 2 <= most[in];
          if (mayCome[also] && also != out && also != alsoOut && enough) {
            offer(out, alsoOut, in, also);
          }
        }
      }
    }
  }

  private void offer(int out, int alsoOut, int in, int alsoIn) {
    double price = of(prices, in) + of(prices, alsoIn) - of(prices, out) - of(prices, alsoOut);
    if (price > 0) {
      double taken = of(room, in) + of(room, alsoIn) - of(room, out) - of(room, alsoOut);
      found.add(new Exchange(out, alsoOut, in, alsoIn, price - roomPrice * taken));
    }
  }

  private static double of(double[] figures, int kind) {
    return kind == NONE ? 0 : figures[kind];
  }

  private int[] content(Exchange exchange) {
    int[] content = counts.clone();
    add(content, exchange.out(), -1);
    add(content, exchange.alsoOut(), -1);
    add(content, exchange.in(), 1);
    add(content, exchange.alsoIn(), 1);
    return content;
  }

  private static void add(int[] content, int kind, int pieces) {
    if (kind != NONE) {
      content[kind] += pieces;
    }
  }
}
