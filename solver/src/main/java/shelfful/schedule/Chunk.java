package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import shelfful.ware.FiringKind;

/**
 * Units of one lot that are planned as one.
 *
 * @param lot they are of
 * @param numbers of the units, rising
 * @param bisque whether they still need a bisque firing
 * @param glaze whether they still need a glaze firing that is not held already
 * @param ready when they can go into the first firing they still need, in minutes
 * @param deadline the latest minute of being bisqued and glazed for a held glaze firing, or −1
 * @param bisqueHint where they were to be bisqued
 * @param glazeHint where they were to be glaze fired
 */
record Chunk(
    Lot lot,
    List<Integer> numbers,
    boolean bisque,
    boolean glaze,
    long ready,
    long deadline,
    Optional<Hint> bisqueHint,
    Optional<Hint> glazeHint) {
  Chunk {
    numbers = List.copyOf(numbers);
  }

  Chunk of(List<Integer> some) {
    return new Chunk(lot, some, bisque, glaze, ready, deadline, bisqueHint, glazeHint);
  }

  /** After its bisque firing. */
  Chunk bisqued(long readyAgain) {
    long later = Math.max(readyAgain, lot.glazeReady());
    return new Chunk(lot, numbers, false, glaze, later, -1, Optional.empty(), glazeHint);
  }

  Chunk hinted(Optional<Hint> bisqueAt, Optional<Hint> glazeAt) {
    return new Chunk(lot, numbers, bisque, glaze, ready, deadline, bisqueAt, glazeAt);
  }

  boolean needs(FiringKind kind) {
    return kind == FiringKind.BISQUE ? bisque : glaze;
  }

  boolean isDone() {
    return !bisque && !glaze;
  }
}
