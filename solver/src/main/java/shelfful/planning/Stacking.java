package shelfful.planning;

import java.util.List;
import shelfful.kiln.Shelf;
import shelfful.measure.Point;

/**
 * How shelves and posts stand: derived from what the layers must carry.
 *
 * @param shelves every level's shelves, column by column, from the bottom
 * @param posts every group of equal posts
 * @param overloaded how many shelves carry more than their limit
 */
record Stacking(List<List<LevelStand>> shelves, List<PostGroup> posts, int overloaded) {
  Stacking {
    shelves = shelves.stream().map(List::copyOf).toList();
    posts = List.copyOf(posts);
  }

  /**
   * One level of a column.
   *
   * @param underside of its shelves, micrometres over the floor
   * @param z top of its shelves
   * @param room from the top of its shelves to the shelf above, or to where pieces may reach under
   *     the lid
   * @param shelves by place
   * @param postsOn where posts stand on it, chamber frame; empty on top
   */
  record LevelStand(long underside, long z, long room, List<Shelf> shelves, List<Point> postsOn) {}

  /**
   * Equal posts that carry one level, or the lowest levels of the columns standing on it.
   *
   * @param at where they stand
   * @param base what they stand on, micrometres over the floor
   * @param makings for each of them the kinds of post it is made of, the lowest first
   */
  record PostGroup(List<Point> at, long base, List<int[]> makings) {
    PostGroup {
      at = List.copyOf(at);
      makings = List.copyOf(makings);
    }
  }

  LevelStand level(int column, int level) {
    return shelves.get(column).get(level);
  }
}
