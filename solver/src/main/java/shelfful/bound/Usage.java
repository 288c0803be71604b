package shelfful.bound;

/** What the best stacks of one step are worth, and what is left of everything. */
final class Usage {
  private final PostChoice choice;
  private final Prices prices;
  private final double[] pieces;
  private final double[] posts;
  private final double[] shelves;
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
    for (Pile level = pile; level != null; level = level.above()) {
      takeShelves(column);
      if (level.post() >= 0) {
        takePosts(level.post(), column.posts());
      }
      takePieces(level.level());
    }
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
      double[] amounts = level.amounts();
      for (int i = 0; i < pieces.length; i++) {
        pieces[i] -= amounts[i];
      }
    }
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
