package shelfful.inspect.fault;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Post;
import shelfful.load.Load;
import shelfful.load.StandingPost;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Posts that are missing, wrong or not where they belong. */
final class PostFaults {
  /** A post's middle may be a millimetre off. */
  private static final long OFF = 1000 + PieceFaults.SHORT;

  private PostFaults() {}

  private static List<StandingPost> shuffled(Load load, Random random) {
    List<StandingPost> posts = new ArrayList<>(load.posts());
    Collections.shuffle(posts, random);
    return posts;
  }

  private static Stream<Post> kinds(Load load, StandingPost post) {
    return post.postIds().stream().map(id -> load.request().studio().post(id).orElseThrow());
  }

  static long length(Load load, StandingPost post) {
    return kinds(load, post).mapToLong(kind -> kind.length().micrometres()).sum();
  }

  static long across(Load load, StandingPost post) {
    return kinds(load, post).mapToLong(kind -> kind.across().micrometres()).max().orElse(0);
  }

  static Optional<Load> dropped(Load load, Random random) {
    return shuffled(load, random).stream()
        .findFirst()
        .map(
            gone ->
                LoadEdit.posts(load, load.posts().stream().filter(post -> post != gone).toList()));
  }

  /** Of the posts under one layer only two are left. */
  static Optional<Load> allButTwoDropped(Load load, Random random) {
    String layerId = load.layers().get(random.nextInt(load.layers().size())).id();
    List<StandingPost> under =
        shuffled(load, random).stream().filter(post -> post.carries().contains(layerId)).toList();
    List<StandingPost> gone = under.subList(Math.min(2, under.size()), under.size());
    return Optional.of(
        LoadEdit.posts(load, load.posts().stream().filter(post -> !gone.contains(post)).toList()));
  }

  static Optional<Load> stolen(Load load, Random random) {
    return shuffled(load, random).stream()
        .findFirst()
        .map(
            standing -> {
              String id = standing.postIds().get(0);
              int used =
                  (int)
                      load.posts().stream()
                          .flatMap(post -> post.postIds().stream())
                          .filter(id::equals)
                          .count();
              return StudioEdit.posts(
                  load,
                  posts ->
                      posts.stream()
                          .map(post -> post.id().equals(id) ? counted(post, used - 1) : post)
                          .toList());
            });
  }

  private static Post counted(Post post, int count) {
    return new Post(post.id(), post.length(), post.across(), count);
  }

  static Optional<Load> ofWrongLength(Load load, Random random) {
    for (StandingPost standing : shuffled(load, random)) {
      for (Post kind : load.request().studio().posts()) {
        if (kind.length().micrometres() != length(load, standing)) {
          return Optional.of(of(load, standing, List.of(kind.id())));
        }
      }
    }
    return Optional.empty();
  }

  static Optional<Load> ofTooManyPieces(Load load, Random random) {
    int most = load.request().studio().rules().mostPostPieces();
    return shuffled(load, random).stream()
        .findFirst()
        .map(
            standing ->
                of(load, standing, Collections.nCopies(most + 1, standing.postIds().get(0))));
  }

  /** The upper piece of a stacked post becomes two millimetres thicker. */
  static Optional<Load> ofTwoSections(Load load, Random random) {
    return shuffled(load, random).stream()
        .filter(standing -> standing.postIds().size() == 2)
        .findFirst()
        .map(
            standing -> {
              Post upper = kinds(load, standing).toList().get(1);
              Length thicker = upper.across().plus(new Length(2000));
              Load withThick =
                  StudioEdit.posts(
                      load,
                      posts ->
                          Stream.concat(
                                  posts.stream(),
                                  Stream.of(new Post("planted", upper.length(), thicker, 1)))
                              .toList());
              return of(withThick, standing, List.of(standing.postIds().get(0), "planted"));
            });
  }

  private static Load of(Load load, StandingPost post, List<String> postIds) {
    return LoadEdit.post(
        load, post, old -> new StandingPost(old.at(), old.base(), postIds, old.carries()));
  }

  static Optional<Load> outOfPlace(Load load, Random random) {
    return shuffled(load, random).stream().findFirst().map(post -> moved(load, post, OFF));
  }

  static Optional<Load> notOverPost(Load load, Random random) {
    return shuffled(load, random).stream()
        .filter(post -> post.base().isPositive())
        .findFirst()
        .map(post -> moved(load, post, OFF));
  }

  /** Beside another post, a twentieth of a millimetre too near. */
  static Optional<Load> inPost(Load load, Random random) {
    return shuffled(load, random).stream()
        .findFirst()
        .map(
            post -> {
              List<StandingPost> posts = new ArrayList<>(load.posts());
              posts.add(at(post, across(load, post) - PieceFaults.SHORT));
              return LoadEdit.posts(load, posts);
            });
  }

  private static Load moved(Load load, StandingPost post, long right) {
    return LoadEdit.post(load, post, old -> at(old, right));
  }

  private static StandingPost at(StandingPost post, long right) {
    Point at = new Point(post.at().x().plus(new Length(right)), post.at().y());
    return new StandingPost(at, post.base(), post.postIds(), post.carries());
  }

  static Optional<Load> inKeepOut(Load load, Random random) {
    return shuffled(load, random).stream()
        .findFirst()
        .map(
            post ->
                StudioEdit.keepOut(
                    load,
                    new KeepOut(
                        "planted",
                        KeepOut.Kind.CONE_PACK,
                        post.at(),
                        post.at(),
                        new Length(1000),
                        post.base(),
                        post.base().plus(new Length(length(load, post))))));
  }
}
