package shelfful.packing;

import java.util.List;

/**
 * A limit that every valid content of a shelf obeys: the counts of each kind times its share add up
 * to at most the room.
 *
 * @param room the area there is, mm²
 * @param shares the least area that one body of each kind takes, mm²; 0 for kinds that do not exist
 *     at the height looked at
 */
public record AreaBudget(double room, List<Double> shares) {
  /** Copies the shares. */
  public AreaBudget {
    shares = List.copyOf(shares);
  }

  /** The area that so many of each kind take at least. */
  public double taken(int[] counts) {
    double sum = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      sum += counts[kind] * shares.get(kind);
    }
    return sum;
  }
}
