package shelfful.inspect;

/** Square roots of whole numbers, exact. */
final class WholeRoot {
  private WholeRoot() {}

  /** The largest whole number whose square is not more than a number from 0 to 9·10¹⁸. */
  static long floor(long square) {
    long root = (long) Math.sqrt(square);
    while (root * root > square) {
      root--;
    }
    while ((root + 1) * (root + 1) <= square) {
      root++;
    }
    return root;
  }

  /** The smallest whole number whose square is not less. */
  static long ceiling(long square) {
    long root = floor(square);
    return root * root == square ? root : root + 1;
  }
}
