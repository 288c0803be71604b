package shelfful.inspect;

import java.util.List;
import shelfful.kiln.Post;
import shelfful.load.StandingPost;

/**
 * A post where it stands. Micrometres.
 *
 * @param standing as the load says
 * @param pieces the posts it is made of, the lowest first, none unknown
 */
record StoodPost(StandingPost standing, List<Post> pieces) {

  long base() {
    return standing.base().micrometres();
  }

  long length() {
    return pieces.stream().mapToLong(post -> post.length().micrometres()).sum();
  }

  long top() {
    return base() + length();
  }

  HeightRange heights() {
    return new HeightRange(base(), top());
  }

  /** What its widest piece covers. */
  Disc footprint() {
    long across = pieces.stream().mapToLong(post -> post.across().micrometres()).max().orElse(0);
    return new Disc(standing.at().x().micrometres(), standing.at().y().micrometres(), across);
  }

  Vector middle() {
    return Vector.of(standing.at());
  }

  boolean carries(LaidShelf shelf) {
    return standing.carries().contains(shelf.id());
  }

  /** Whether its middle is within a millimetre of a point: as near as a hand can set it. */
  boolean standsAt(Vector point) {
    return middle().minus(point).length() <= 1000;
  }
}
