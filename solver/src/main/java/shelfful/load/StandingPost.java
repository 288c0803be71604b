package shelfful.load;

import java.util.List;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * A post as it stands in the kiln, of one piece or two stacked.
 *
 * @param at its middle, chamber frame
 * @param base the height it stands at: the floor (0) or the top of a shelf
 * @param postIds the kinds of post it is made of, the lowest first
 * @param carries the layers whose shelves lie on it
 */
public record StandingPost(Point at, Length base, List<String> postIds, List<String> carries) {
  /** Takes its own copies. */
  public StandingPost {
    postIds = List.copyOf(postIds);
    carries = List.copyOf(carries);
  }
}
