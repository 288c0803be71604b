package shelfful.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import shelfful.kiln.Post;
import shelfful.studio.Studio;

/** Every length that standing posts can have, and what one costs under prices of posts. */
final class PostChoice {
  private final List<Post> posts;
  private final TreeMap<Long, List<int[]>> makings = new TreeMap<>();
  private final long[] lengths;
  private final int[] available;

  PostChoice(Studio studio) {
    this.posts = studio.posts();
    for (int a = 0; a < posts.size(); a++) {
      Post one = posts.get(a);
      if (one.count() > 0) {
        add(one.length().micrometres(), a);
      }
      for (int b = a; studio.rules().mostPostPieces() > 1 && b < posts.size(); b++) {
        Post other = posts.get(b);
        boolean there = one.count() > 0 && other.count() > (a == b ? 1 : 0);
        if (there && one.across().equals(other.across())) {
          add(one.length().micrometres() + other.length().micrometres(), a, b);
        }
      }
    }
    lengths = makings.keySet().stream().mapToLong(Long::longValue).toArray();
    available = makings.values().stream().mapToInt(this::available).toArray();
  }

  private void add(long length, int... kinds) {
    makings.computeIfAbsent(length, key -> new ArrayList<>()).add(kinds);
  }

  /** No more posts of a length than these can stand at once. */
  private int available(List<int[]> ways) {
    int total = 0;
    for (int[] way : ways) {
      int most = posts.get(way[0]).count();
      if (way.length == 2) {
        most = way[0] == way[1] ? most / 2 : Math.min(most, posts.get(way[1]).count());
      }
      total += most;
    }
    return total;
  }

  int size() {
    return lengths.length;
  }

  /** A length by index, shortest first, micrometres. */
  long length(int index) {
    return lengths[index];
  }

  /** Whether so many posts of a length can stand at once. */
  boolean isThere(int index, int wanted) {
    return available[index] >= wanted;
  }

  /** The cheapest way to make a length. */
  int[] cheapest(int index, double[] prices) {
    int[] best = null;
    for (int[] way : makings.get(lengths[index])) {
      if (best == null || cost(way, prices) < cost(best, prices)) {
        best = way;
      }
    }
    return best;
  }

  static double cost(int[] way, double[] prices) {
    double cost = 0;
    for (int kind : way) {
      cost += prices[kind];
    }
    return cost;
  }
}
