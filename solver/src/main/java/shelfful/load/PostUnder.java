package shelfful.load;

import java.util.List;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * A post under a locked layer.
 *
 * @param at its middle, chamber frame
 * @param base the height it stands at: the floor (0) or the top of a shelf
 * @param postIds the kinds of post it is made of, the lowest first
 */
public record PostUnder(Point at, Length base, List<String> postIds) {
  /** Takes its own copy. */
  public PostUnder {
    postIds = List.copyOf(postIds);
  }

  static PostUnder of(StandingPost post) {
    return new PostUnder(post.at(), post.base(), post.postIds());
  }
}
