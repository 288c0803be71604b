package shelfful.bound;

import java.util.EnumMap;
import java.util.Map;

/** What the best stacks of one step are worth, and what is left of everything. */
final class Usage {
  private final PostChoice choice;
  private final Prices prices;
  private final double[] pieces;
  private final double[] posts;
  private final double[] shelves;
  private final Map<LimitCause, Integer> causes = new EnumMap<>(LimitCause.class);
  private boolean outOfShelves;
  private double value;

  Usage(PostChoice choice, Prices prices, double[] pieces, double[] posts, double[] shelves) {
    this.choice = choice;
    this.prices = prices;
    this.pieces = pieces.clone();
    this.posts = posts.clone();
    this.shelves = shelves.clone();
  }

  double value() {
    return value;
  }

  void add(double more) {
    value += more;
  }

  /** Counts what a pile of a column uses. */
  void take(ColumnLevels column, Pile pile) {
    int levels = 0;
    for (Pile level = pile; level != null; level = level.above()) {
      levels++;
      takeShelves(column);
      if (level.post() >= 0) {
        takePosts(level.post(), column.posts());
      }
      takePieces(level.level());
    }
    outOfShelves |= levels >= column.mostLevels();
  }

  void takeShelves(ColumnLevels column) {
    for (int kind : column.cheapestShelves(prices)) {
      shelves[kind]--;
    }
  }

  void takePosts(int length, int count) {
    for (int kind : choice.cheapest(length, prices.posts())) {
      posts[kind] -= count;
    }
  }

  void takePieces(LevelWorth level) {
    if (level != null) {
      causes.merge(level.cause(), 1, Integer::sum);
      double[] amounts = level.amounts();
      for (int i = 0; i < pieces.length; i++) {
        pieces[i] -= amounts[i];
      }
    }
  }

  /** Whether some column has as many levels as there are shelves for. */
  boolean isOutOfShelves() {
    return outOfShelves;
  }

  /** What stops most levels; the height when there is none. */
  LimitCause cause() {
    return causes.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(LimitCause.HEIGHT);
  }

  double[] pieces() {
    return pieces;
  }

  double[] posts() {
    return posts;
  }

  double[] shelves() {
    return shelves;
  }
}
