package shelfful.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The finished answer for one firing: where everything stands, and what waits. Nothing here
 * promises that it obeys the rules; only an inspection does.
 *
 * @param request what was asked, so that a load can be judged by itself
 * @param columnPlanId the column plan of the kiln that is used
 * @param layers by column, lowest first
 * @param posts every standing post
 * @param leftOut what waits
 */
public record Load(
    LoadRequest request,
    String columnPlanId,
    List<Layer> layers,
    List<StandingPost> posts,
    List<LeftOut> leftOut) {
  /** Takes its own copies. */
  public Load {
    layers = List.copyOf(layers);
    posts = List.copyOf(posts);
    leftOut = List.copyOf(leftOut);
  }

  public Optional<Layer> layer(String id) {
    return layers.stream().filter(layer -> layer.id().equals(id)).findFirst();
  }

  /** The ids of the pieces that go in. */
  public Set<String> standing() {
    return layers.stream()
        .flatMap(layer -> layer.placements().stream())
        .map(Placement::pieceId)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** How many pieces go in. */
  public int placed() {
    return layers.stream().mapToInt(layer -> layer.placements().size()).sum();
  }
}
