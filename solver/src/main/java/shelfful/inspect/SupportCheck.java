package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import shelfful.kiln.Column;

/**
 * A shelf lies on at least three posts that are under it, with the middle of its area within them.
 */
final class SupportCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (LaidShelf shelf : setting.shelves()) {
      List<Vector> points =
          setting.posts().stream()
              .filter(post -> isUnder(post, shelf))
              .map(StoodPost::middle)
              .toList();
      if (points.size() < Column.LEAST_POSTS) {
        findings.add(
            Rule.SHELF_UNSUPPORTED,
            shelf.id(),
            String.format(
                Locale.ROOT,
                "The shelf of layer %s lies on %d posts. It needs at least three under it.",
                shelf.id(),
                points.size()));
      } else if (!isWithin(shelf.centroid(), points)) {
        findings.add(
            Rule.SHELF_UNSUPPORTED,
            shelf.id(),
            String.format(
                Locale.ROOT,
                "The middle of the shelf of layer %s is not within its posts, it would tip. Spread the posts.",
                shelf.id()));
      }
    }
  }

  private static boolean isUnder(StoodPost post, LaidShelf shelf) {
    return post.carries(shelf)
        && post.top() == shelf.underside()
        && Gap.between(post.footprint(), shelf.footprint(), 1).micrometres() <= 0;
  }

  private static boolean isWithin(Vector point, List<Vector> posts) {
    Disc middle = new Disc(Math.round(point.x()), Math.round(point.y()), 0);
    return Gap.between(Slab.hullOf(posts), middle, 2 * Reading.TOLERANCE).micrometres()
        <= Reading.TOLERANCE;
  }
}
