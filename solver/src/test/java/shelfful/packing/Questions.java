package shelfful.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;

/** Questions that several tests ask. */
final class Questions {
  /** A round shelf of a common size, mm. */
  static final double SHELF_RADIUS = 533 / 2.0;

  private Questions() {}

  /** Equal circles of 100 mm in a region, nothing between them. */
  static ShelfQuestion circles(Region region, int count) {
    return touching(region, List.of(BodyKind.round("circle", 100, 10)), count);
  }

  /** Bodies that may touch one another and the wall. */
  static ShelfQuestion touching(Region region, List<BodyKind> kinds, int... counts) {
    return ShelfQuestion.of(ShelfSpace.of(new Room(region, 0, Applies.BODY)), kinds, counts, 0);
  }

  /** Radii 1 to n, one of each, in a circle. */
  static ShelfQuestion radiiOneTo(int n, double containerRadius) {
    List<BodyKind> kinds =
        IntStream.rangeClosed(1, n).mapToObj(r -> BodyKind.round("radius " + r, r, 1)).toList();
    int[] counts = new int[n];
    Arrays.fill(counts, 1);
    return touching(Region.disc(containerRadius), kinds, counts);
  }

  /** A cup of 85 mm with a handle that stands out 35 mm and is 18 mm wide. */
  static BodyKind cup() {
    Disc wall = Disc.of(42.5);
    Capsule handle = new Capsule(42.5, 0, 42.5 + 35 - 9, 0, 9);
    return new BodyKind(
        "cup", List.of(new Part(wall, 0, 95), new Part(handle, 20, 80)), wall, true, 0);
  }

  /** An oval dish. */
  static BodyKind dish() {
    return BodyKind.upright("dish", Oval.of(80, 45), 40);
  }

  /** A round shelf with three posts of 38 mm, 38 mm in from its edge, 10 mm clear. */
  static ShelfSpace shelfOnThreePosts() {
    List<Obstacle> posts = new ArrayList<>();
    double out = SHELF_RADIUS - 38 - 19;
    for (int i = 0; i < 3; i++) {
      double angle = 2 * Math.PI * i / 3;
      Disc post = new Disc(out * Math.cos(angle), out * Math.sin(angle), 19);
      posts.add(new Obstacle(post, 0, 300, 10));
    }
    return new ShelfSpace(List.of(new Room(Region.disc(SHELF_RADIUS), 0, Applies.BODY)), posts);
  }
}
