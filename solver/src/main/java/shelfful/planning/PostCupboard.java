package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shelfful.kiln.Post;
import shelfful.studio.Studio;

/** Every height the posts in the cupboard can make, lowest first. */
final class PostCupboard {
  private final List<Post> posts;
  private final List<PostLength> lengths;

  PostCupboard(Studio studio) {
    this.posts = studio.posts();
    this.lengths = lengths(studio.rules().mostPostPieces());
  }

  private record Size(long height, long across) implements Comparable<Size> {
    @Override
    public int compareTo(Size other) {
      int byHeight = Long.compare(height, other.height);
      return byHeight != 0 ? byHeight : Long.compare(across, other.across);
    }
  }

  private List<PostLength> lengths(int mostPieces) {
    Map<Size, List<int[]>> makings = new TreeMap<>();
    for (int a = 0; a < posts.size(); a++) {
      Post one = posts.get(a);
      if (one.count() > 0) {
        add(makings, one.length().micrometres(), one, a);
      }
    }
    for (int a = 0; mostPieces > 1 && a < posts.size(); a++) {
      for (int b = a; b < posts.size(); b++) {
        Post lower = posts.get(a);
        Post upper = posts.get(b);
        boolean inStock = lower.count() > 0 && upper.count() > 0 && (a != b || lower.count() > 1);
        if (inStock && lower.across().equals(upper.across())) {
          boolean firstIsLonger = lower.length().isLongerThan(upper.length());
          long height = lower.length().micrometres() + upper.length().micrometres();
          add(makings, height, lower, firstIsLonger ? new int[] {a, b} : new int[] {b, a});
        }
      }
    }
    return makings.entrySet().stream()
        .map(e -> new PostLength(e.getKey().height(), e.getKey().across(), e.getValue()))
        .toList();
  }

  private static void add(Map<Size, List<int[]>> makings, long height, Post post, int... kinds) {
    Size size = new Size(height, post.across().micrometres());
    makings.computeIfAbsent(size, key -> new ArrayList<>()).add(kinds);
  }

  List<PostLength> lengths() {
    return lengths;
  }

  int[] stock() {
    return posts.stream().mapToInt(Post::count).toArray();
  }

  /** What a post of some pieces is made of. */
  int[] making(List<String> ids) {
    int[] making = new int[ids.size()];
    for (int i = 0; i < making.length; i++) {
      for (int kind = 0; kind < posts.size(); kind++) {
        making[i] = posts.get(kind).id().equals(ids.get(i)) ? kind : making[i];
      }
    }
    return making;
  }

  /** How high a post of such a making is, in micrometres. */
  long height(int[] making) {
    return Arrays.stream(making).mapToLong(kind -> posts.get(kind).length().micrometres()).sum();
  }

  /** How far across, in micrometres. */
  long across(int[] making) {
    return posts.get(making[0]).across().micrometres();
  }

  String id(int kind) {
    return posts.get(kind).id();
  }

  /** The widest section in the cupboard, in millimetres: what ware keeps clear of. */
  double widest() {
    return posts.stream().mapToDouble(post -> post.across().millimetres()).max().orElse(0);
  }
}
