package shelfful.week;

import java.util.List;

/**
 * Pieces of one batch in one firing.
 *
 * @param batchId the batch
 * @param numbers of the pieces within the batch, rising; the first of them is the load's first
 *     piece of this batch, and so on
 */
public record Portion(String batchId, List<Integer> numbers) {
  /** Takes its own copy; refuses an empty portion and numbers that do not rise. */
  public Portion {
    numbers = List.copyOf(numbers);
    if (numbers.isEmpty()) {
      throw new IllegalArgumentException("A portion of batch " + batchId + " is empty");
    }
    for (int i = 1; i < numbers.size(); i++) {
      if (numbers.get(i) <= numbers.get(i - 1)) {
        throw new IllegalArgumentException(
            "The numbers of a portion of batch " + batchId + " must rise");
      }
    }
  }

  /** How many pieces. */
  public int size() {
    return numbers.size();
  }
}
