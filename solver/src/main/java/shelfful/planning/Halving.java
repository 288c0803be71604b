package shelfful.planning;

import java.util.function.IntPredicate;

/** Adds as many as go, by a guess that is halved while it is too bold. */
final class Halving {
  private Halving() {}

  /**
   * How many were added.
   *
   * @param guess how many to try at once first
   * @param can how many there are
   * @param add adds so many more, or tells that they do not go and adds none
   */
  static int most(int guess, int can, IntPredicate add) {
    int added = 0;
    int step = Math.min(can, guess);
    while (step > 0) {
      if (add.test(step)) {
        added += step;
        step = Math.min(1, can - added);
      } else {
        step /= 2;
      }
    }
    return added;
  }
}
