package shelfful.load;

import java.util.Comparator;
import java.util.List;
import shelfful.measure.Length;

/**
 * A layer that stays exactly as it is: its shelf, the posts under it, its height and everything on
 * it.
 *
 * @param layer which layer
 * @param shelfId the kind of shelf
 * @param z the top of the shelf, over the chamber floor
 * @param placements all that stands on it, in the order of the pieces' ids; may be empty
 * @param posts those that carry it, from left to right and front to back
 */
public record LockedLayer(
    LayerPlace layer, String shelfId, Length z, List<Placement> placements, List<PostUnder> posts) {
  private static final Comparator<PostUnder> BY_PLACE =
      Comparator.comparing((PostUnder post) -> post.at().x())
          .thenComparing(post -> post.at().y())
          .thenComparing(PostUnder::base);

  /** Takes its own copies, in order. */
  public LockedLayer {
    placements = placements.stream().sorted(Comparator.comparing(Placement::pieceId)).toList();
    posts = posts.stream().sorted(BY_PLACE).toList();
  }

  /** A layer of a load as it stands there. */
  public static LockedLayer of(Load load, Layer layer) {
    List<PostUnder> posts =
        load.posts().stream()
            .filter(post -> post.carries().contains(layer.id()))
            .map(PostUnder::of)
            .toList();
    return new LockedLayer(
        LayerPlace.of(layer), layer.shelfId(), layer.z(), layer.placements(), posts);
  }
}
