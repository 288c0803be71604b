package shelfful.bound;

import shelfful.bound.ColumnLevels.Standing;

/**
 * A column on the floor. Of a column that stands on others it is an upper bound too: where it
 * really begins there is less height, and the level under it is then taken to be open to the
 * ceiling.
 */
final class LoneColumn implements Cluster {
  private final ColumnLevels levels;

  LoneColumn(ColumnLevels levels) {
    this.levels = levels;
  }

  @Override
  public void best(Prices prices, Usage usage) {
    levels.prepare(prices);
    take(levels, levels.onFloor(), usage);
  }

  @Override
  public boolean canHold(int offer) {
    return levels.canHold(offer);
  }

  static void take(ColumnLevels levels, Standing standing, Usage usage) {
    if (standing != null && standing.worth() > 0) {
      usage.add(standing.worth());
      usage.takePosts(standing.first(), levels.posts());
      usage.take(levels, standing.lowest());
    }
  }
}
