package shelfful.planning;

import java.util.function.LongUnaryOperator;

/**
 * For each level of a stack the least height from its underside to the highest thing over it, the
 * columns on top included: what cannot be built under the ceiling is given up at once.
 */
final class LeastHeights {
  private final Stand stand;
  private final StackNeeds needs;
  private final ShelfCupboard.Choice choice;
  private final LongUnaryOperator shortestPost;

  /**
   * @param shortestPost the shortest post at least so high, in micrometres
   */
  LeastHeights(
      Stand stand, StackNeeds needs, ShelfCupboard.Choice choice, LongUnaryOperator shortestPost) {
    this.stand = stand;
    this.needs = needs;
    this.choice = choice;
    this.shortestPost = shortestPost;
  }

  /**
   * The heights for one column's levels, and last what stands on top of them.
   *
   * @param later the same for all columns of higher index
   */
  long[] from(int column, long[][] later) {
    int levels = needs.levels(column);
    long[] least = new long[levels + 1];
    for (int upper : stand.above(column)) {
      boolean known = upper > column && needs.isBuilt(upper);
      least[levels] = Math.max(least[levels], known ? later[upper][0] : 0);
    }
    for (int l = levels - 1; l >= 0; l--) {
      long tallest = needs.level(column, l).tallest();
      boolean onTop = l == levels - 1 && least[levels] == 0;
      long post = Math.max(tallest + stand.headroom(), stand.leastLayer());
      long thickness = choice.shelves(column, l).get(0).thickness().micrometres();
      least[l] = thickness + (onTop ? tallest : shortestPost.applyAsLong(post) + least[l + 1]);
    }
    return least;
  }
}
