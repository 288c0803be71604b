package shelfful.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Length;
import shelfful.measure.Mass;

/** What is in a studio's cupboard: so many shelves of every kind, so many posts of every length. */
final class SampleShelves {
  static final Slab SQUARE = new Slab("square", 508, 508);
  static final Slab LONG = new Slab("long", 305, 610);

  private static final double THICKNESS = 19;
  private static final double POST_ACROSS = 38;

  /** Whole inches, the lengths that posts are sold in (common practice, no source). */
  private static final int[] INCHES = {1, 2, 3, 4, 5, 6, 8, 10, 12};

  private SampleShelves() {}

  /** A rectangular shelf, millimetres. */
  record Slab(String id, double width, double depth) {}

  /**
   * So many of each kind of shelf.
   *
   * @param kilograms the most that each may carry; empty for no limit
   */
  static List<Shelf> shelves(int count, Optional<Double> kilograms) {
    Optional<Mass> limit = kilograms.map(Mass::ofKilograms);
    return List.of(
        shelf("full", new ShelfOutline.FullRound(mm(540)), limit, count),
        shelf("half", new ShelfOutline.HalfRound(mm(540), mm(3)), limit, 2 * count),
        shelf("small", new ShelfOutline.FullRound(mm(380)), limit, count),
        shelf(SQUARE, limit, 5 * count),
        shelf(LONG, limit, 3 * count));
  }

  /** So many posts of each length from one inch to a foot. */
  static List<Post> posts(int count) {
    List<Post> posts = new ArrayList<>();
    for (int inches : INCHES) {
      posts.add(new Post(inches + "-inch", Length.ofInches(inches), mm(POST_ACROSS), count));
    }
    return posts;
  }

  private static Shelf shelf(Slab slab, Optional<Mass> limit, int count) {
    return shelf(
        slab.id(), new ShelfOutline.Rectangle(mm(slab.width()), mm(slab.depth())), limit, count);
  }

  private static Shelf shelf(String id, ShelfOutline outline, Optional<Mass> limit, int count) {
    return new Shelf(id, id, outline, mm(THICKNESS), limit, Optional.empty(), count);
  }

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
