package shelfful.packing;

import java.util.Arrays;

/**
 * Numbers one after the other, as many as needed, without an object for each: what is near what.
 */
final class NearList {
  int[] numbers = new int[64];

  /** How many of the numbers count. */
  int end;

  void clear() {
    end = 0;
  }

  void add(int number) {
    if (end == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * end);
    }
    numbers[end++] = number;
  }
}
