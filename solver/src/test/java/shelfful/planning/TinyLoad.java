package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import shelfful.geometry.Disc;
import shelfful.geometry.Region;
import shelfful.packing.Applies;
import shelfful.packing.BodyKind;
import shelfful.packing.Effort;
import shelfful.packing.Obstacle;
import shelfful.packing.Packed;
import shelfful.packing.Room;
import shelfful.packing.ShelfPacker;
import shelfful.packing.ShelfQuestion;
import shelfful.packing.ShelfSpace;

/**
 * A load of at most two layers and a few wide cups: every way to share the cups out is asked of the
 * packer, one after the other.
 */
final class TinyLoad {
  private static final double FOOT_IN = 5;
  private static final double WALL = 20;
  private static final double GAP = 6;
  private static final double POST_GAP = 10;
  private static final double HEADROOM = 10;
  private static final double CEILING = 390;
  private static final double[] POSTS = {20, 80, 120, 40, 100, 140, 160, 200, 240};

  private final int shelves;
  private final double[] across;
  private final double[] heights;
  private final int[] counts;
  private final int[] priorities;

  private TinyLoad(int shelves, double[] across, double[] heights, int[] counts, int[] priorities) {
    this.shelves = shelves;
    this.across = across;
    this.heights = heights;
    this.counts = counts;
    this.priorities = priorities;
  }

  /** The most that goes in. */
  record Best(int pieces, long worth) {}

  static TinyLoad of(Random random) {
    int kinds = 1 + random.nextInt(3);
    int[] counts = new int[kinds];
    for (int i = 0; i < 2 + random.nextInt(7); i++) {
      counts[random.nextInt(kinds)]++;
    }
    return new TinyLoad(
        1 + random.nextInt(2),
        random.ints(kinds, 90, 260).asDoubleStream().toArray(),
        random.ints(kinds, 40, 190).asDoubleStream().toArray(),
        counts,
        random.ints(kinds, 1, 4).toArray());
  }

  Scene scene() {
    Scene scene = new Scene().shelves(shelves);
    for (int k = 0; k < counts.length; k++) {
      int priority = priorities[k];
      if (counts[k] > 0) {
        scene.cup("c" + k, across[k], heights[k]).batch("B" + k, "c" + k, counts[k]);
        scene.but(batch -> PlainBatch.priority(batch, priority));
      }
    }
    return scene;
  }

  Best best() {
    List<int[]> all = selections();
    List<int[]> onTop = all.stream().filter(chosen -> fits(chosen, false)).toList();
    List<int[]> under =
        shelves > 1 ? all.stream().filter(chosen -> fits(chosen, true)).toList() : List.of();
    int pieces = 0;
    long worth = 0;
    for (int[] top : onTop) {
      if (tallest(top) <= CEILING - 30) {
        pieces = Math.max(pieces, pieces(top, new int[counts.length]));
        worth = Math.max(worth, worth(top, new int[counts.length]));
      }
      for (int[] low : under) {
        if (stacks(low, top) && areThere(low, top)) {
          pieces = Math.max(pieces, pieces(top, low));
          worth = Math.max(worth, worth(top, low));
        }
      }
    }
    return new Best(pieces, worth);
  }

  private boolean stacks(int[] low, int[] top) {
    for (double post : POSTS) {
      if (post >= tallest(low) + HEADROOM && 30 + post + 10 + tallest(top) <= CEILING) {
        return true;
      }
    }
    return false;
  }

  private boolean areThere(int[] low, int[] top) {
    for (int k = 0; k < counts.length; k++) {
      if (low[k] + top[k] > counts[k]) {
        return false;
      }
    }
    return true;
  }

  private double tallest(int[] chosen) {
    double tallest = 0;
    for (int k = 0; k < counts.length; k++) {
      tallest = chosen[k] > 0 ? Math.max(tallest, heights[k]) : tallest;
    }
    return tallest;
  }

  private static int pieces(int[] one, int[] other) {
    int sum = 0;
    for (int k = 0; k < one.length; k++) {
      sum += one[k] + other[k];
    }
    return sum;
  }

  private long worth(int[] one, int[] other) {
    long sum = 0;
    for (int k = 0; k < one.length; k++) {
      sum += 100L * priorities[k] * (one[k] + other[k]);
    }
    return sum;
  }

  private List<int[]> selections() {
    List<int[]> all = new ArrayList<>(List.of(new int[counts.length]));
    for (int k = 0; k < counts.length; k++) {
      List<int[]> longer = new ArrayList<>();
      for (int[] one : all) {
        for (int n = 0; n <= counts[k]; n++) {
          int[] more = one.clone();
          more[k] = n;
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }

  private boolean fits(int[] chosen, boolean withPosts) {
    if (pieces(chosen, new int[counts.length]) == 0) {
      return true;
    }
    List<BodyKind> kinds = new ArrayList<>();
    for (int k = 0; k < counts.length; k++) {
      kinds.add(BodyKind.round("c" + k, across[k] / 2, heights[k]));
    }
    List<Obstacle> posts = new ArrayList<>();
    for (int i = 0; i < 3 && withPosts; i++) {
      double angle = Math.PI / 2 + 2 * Math.PI * i / 3;
      Disc post = new Disc(205 * Math.cos(angle), 205 * Math.sin(angle), 15);
      posts.add(new Obstacle(post, 0, 1000, POST_GAP));
    }
    ShelfSpace space =
        new ShelfSpace(
            List.of(
                new Room(Region.disc(225), FOOT_IN, Applies.FOOT),
                new Room(Region.disc(250), WALL, Applies.BODY)),
            posts);
    ShelfQuestion question = ShelfQuestion.of(space, kinds, chosen, GAP);
    return new ShelfPacker().pack(question, Effort.NORMAL, 1) instanceof Packed;
  }
}
