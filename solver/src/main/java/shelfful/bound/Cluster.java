package shelfful.bound;

/** Columns that stand on each other: what they can hold together. */
interface Cluster {
  /** Adds the best that the columns can be worth, and what it uses. */
  void best(Prices prices, Usage usage);

  /** Whether a piece of an offer can stand somewhere in the columns. */
  boolean canHold(int offer);
}
