package shelfful.studio;

import java.util.List;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.measure.Length;
import shelfful.ware.Glaze;

/** A studio with one thing different. */
public final class StudioChange {
  private StudioChange() {}

  /** So many more shelves of a kind; an id the studio lacks changes nothing. */
  public static Studio moreShelves(Studio studio, String shelfId, int more) {
    List<Shelf> shelves =
        studio.shelves().stream()
            .map(
                shelf ->
                    shelf.id().equals(shelfId)
                        ? shelf(shelf, shelf.thickness(), shelf.count() + more)
                        : shelf)
            .toList();
    return with(studio, studio.glazes(), shelves, studio.posts(), studio.rules());
  }

  /** The shelves of a kind made thinner or thicker. */
  public static Studio shelfThickness(Studio studio, String shelfId, Length thickness) {
    List<Shelf> shelves =
        studio.shelves().stream()
            .map(
                shelf ->
                    shelf.id().equals(shelfId) ? shelf(shelf, thickness, shelf.count()) : shelf)
            .toList();
    return with(studio, studio.glazes(), shelves, studio.posts(), studio.rules());
  }

  /** So many more posts of a kind; an id the studio lacks changes nothing. */
  public static Studio morePosts(Studio studio, String postId, int more) {
    List<Post> posts =
        studio.posts().stream()
            .map(
                post ->
                    post.id().equals(postId)
                        ? new Post(post.id(), post.length(), post.across(), post.count() + more)
                        : post)
            .toList();
    return with(studio, studio.glazes(), studio.shelves(), posts, studio.rules());
  }

  /** Other distances kept. */
  public static Studio clearances(Studio studio, Clearances clearances) {
    HouseRules rules = studio.rules();
    HouseRules changed =
        new HouseRules(
            clearances,
            rules.bellyMayPassEdge(),
            rules.mostPostPieces(),
            rules.catcher(),
            rules.keptApart(),
            rules.dueSoonDays());
    return with(studio, studio.glazes(), studio.shelves(), studio.posts(), changed);
  }

  /** Other glazes. */
  public static Studio glazes(Studio studio, List<Glaze> glazes) {
    return with(studio, glazes, studio.shelves(), studio.posts(), studio.rules());
  }

  private static Shelf shelf(Shelf shelf, Length thickness, int count) {
    return new Shelf(
        shelf.id(),
        shelf.name(),
        shelf.outline(),
        thickness,
        shelf.massLimit(),
        shelf.hottest(),
        count);
  }

  private static Studio with(
      Studio studio, List<Glaze> glazes, List<Shelf> shelves, List<Post> posts, HouseRules rules) {
    return new Studio(
        studio.name(),
        studio.unit(),
        studio.forms(),
        glazes,
        studio.kilns(),
        shelves,
        posts,
        rules);
  }
}
