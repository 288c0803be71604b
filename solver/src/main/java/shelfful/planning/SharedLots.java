package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.ware.Part;
import shelfful.ware.Piece;

/**
 * The lots that several loads take their ware from, counted through, and what is left of each. What
 * is of one batch and part is one lot, whichever load's list it is on.
 */
final class SharedLots {
  private final Map<Key, Integer> numbers = new HashMap<>();

  /** By number. */
  private final List<Lot> lots = new ArrayList<>();

  /** By load and its own index of a lot, the number. */
  private final int[][] numberOf;

  /** By load and number the load's own index, or −1 where it is not on its list. */
  private final int[][] indexIn;

  private final int[] left;

  /** What tells a lot, in whatever load. */
  private record Key(String batchId, Part part, int firstNumber) {
    static Key of(Lot lot) {
      Piece first = lot.pieces().get(0);
      return new Key(first.batch().id(), first.part(), first.number());
    }
  }

  /** All of it is left. */
  SharedLots(List<ReadyWare> loads) {
    numberOf = new int[loads.size()][];
    for (int load = 0; load < numberOf.length; load++) {
      numberOf[load] = loads.get(load).lots().stream().mapToInt(this::number).toArray();
    }
    indexIn = new int[loads.size()][lots.size()];
    for (int load = 0; load < numberOf.length; load++) {
      Arrays.fill(indexIn[load], -1);
      for (int index = 0; index < numberOf[load].length; index++) {
        indexIn[load][numberOf[load][index]] = index;
      }
    }
    left = lots.stream().mapToInt(Lot::size).toArray();
  }

  private int number(Lot lot) {
    int number = numbers.computeIfAbsent(Key.of(lot), key -> lots.size());
    if (number == lots.size()) {
      lots.add(lot);
    }
    return number;
  }

  /** A lot's index in one load by that in another; −1 where it is not on its list. */
  int indexIn(int load, int other, int index) {
    return indexIn[load][numberOf[other][index]];
  }

  /** How many of a load's lot are in no load. */
  int left(int load, int index) {
    return left[numberOf[load][index]];
  }

  /** Takes so many of each of a load's lots from what is left; negative to give back. */
  void take(int load, int[] counts) {
    for (int index = 0; index < counts.length; index++) {
      left[numberOf[load][index]] -= counts[index];
    }
  }

  /** What is left in points. */
  long worthLeft() {
    long sum = 0;
    for (int number = 0; number < left.length; number++) {
      sum += lots.get(number).worth() * left[number];
    }
    return sum;
  }

  /** What a piece is worth on the average, in points. */
  double meanWorth() {
    long worth = lots.stream().mapToLong(lot -> lot.worth() * lot.size()).sum();
    return worth / (double) Math.max(1, lots.stream().mapToInt(Lot::size).sum());
  }
}
