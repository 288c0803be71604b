package shelfful.kiln;

import java.util.List;
import shelfful.measure.Point;

/**
 * Shelves stacked over the same posts. At each level of a column there is one shelf in every place,
 * all at one height, carried by one set of equal posts: two halves side by side on four shared
 * posts are one column with two places; two halves at heights of their own are two columns.
 *
 * @param id unique within a column plan
 * @param places of the shelves at each level; at least one
 * @param posts where posts stand at every level, three or more, chamber frame
 * @param standsOn the columns this one stands on the tops of (full over halves: both halves; halves
 *     over full: the full one); empty when it stands on the chamber floor
 */
public record Column(String id, List<ShelfPlace> places, List<Point> posts, List<String> standsOn) {
  public static final int LEAST_POSTS = 3;

  /** Takes its own copies; refuses a column without places or with fewer than three posts. */
  public Column {
    places = List.copyOf(places);
    posts = List.copyOf(posts);
    standsOn = List.copyOf(standsOn);
    if (places.isEmpty() || posts.size() < LEAST_POSTS) {
      throw new IllegalArgumentException(
          "The column " + id + " needs at least one shelf place and three posts");
    }
  }
}
