package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Gap;
import shelfful.geometry.Pose;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Shelf;
import shelfful.measure.Point;
import shelfful.planning.Stacking.LevelStand;
import shelfful.planning.Stacking.PostGroup;

/**
 * Finds posts and shelves for what the layers must carry: the lowest heights that hold the ware,
 * from the stock there is, with no shelf in a thermocouple or peephole line. Depth-first over post
 * heights, lowest first, with a bound on the number of tries; an answer is exact, a refusal after
 * the bound is not a proof.
 */
final class StackFitter {
  private static final int MOST_TRIES = 4000;
  private static final long NEVER = Long.MAX_VALUE / 1000;

  private final Stand stand;
  private final PostCupboard cupboard;
  private final ShelfCupboard shelves;
  private final Map<Long, List<PostLength>> longEnough = new HashMap<>();

  StackFitter(Stand stand, PostCupboard cupboard) {
    this.stand = stand;
    this.cupboard = cupboard;
    this.shelves = new ShelfCupboard(stand);
  }

  Optional<Stacking> fit(StackNeeds needs) {
    Optional<ShelfCupboard.Choice> chosen = shelves.choose(needs);
    if (chosen.isEmpty()) {
      return Optional.empty();
    }
    Search search = new Search(needs, chosen.get());
    return search.column(0) ? Optional.of(search.result()) : Optional.empty();
  }

  /** Posts at least so high, lowest first. */
  private List<PostLength> atLeast(long height) {
    return longEnough.computeIfAbsent(
        height, least -> cupboard.lengths().stream().filter(l -> l.height() >= least).toList());
  }

  /** The shortest post at least so high, or more than any chamber when there is none. */
  private long shortest(long height) {
    List<PostLength> lengths = atLeast(height);
    return lengths.isEmpty() ? NEVER : lengths.get(0).height();
  }

  /** One depth-first search; the path to the current node is kept in the fields. */
  private final class Search {
    private final StackNeeds needs;
    private final ShelfCupboard.Choice choice;
    private final int[] stock = cupboard.stock();
    private final List<List<LevelStand>> built = new ArrayList<>();
    private final List<PostGroup> posts = new ArrayList<>();
    private final long[] topOfPosts;
    private final long[][] leastFrom;
    private int tries;

    Search(StackNeeds needs, ShelfCupboard.Choice choice) {
      this.needs = needs;
      this.choice = choice;
      this.topOfPosts = new long[stand.columns()];
      this.leastFrom = new long[stand.columns()][];
      for (int c = 0; c < stand.columns(); c++) {
        built.add(new ArrayList<>());
      }
      for (int c = stand.columns() - 1; c >= 0; c--) {
        leastFrom[c] = leastFrom(c);
      }
    }

    /**
     * For each level the least height from its underside to the highest thing over it, the columns
     * on top included: what cannot be built under the ceiling is given up at once.
     */
    private long[] leastFrom(int c) {
      int levels = needs.levels(c);
      long[] least = new long[levels + 1];
      for (int upper : stand.above(c)) {
        boolean later = upper > c && needs.isBuilt(upper);
        least[levels] = Math.max(least[levels], later ? leastFrom[upper][0] : 0);
      }
      for (int l = levels - 1; l >= 0; l--) {
        long tallest = needs.level(c, l).tallest();
        boolean onTop = l == levels - 1 && least[levels] == 0;
        long post = Math.max(tallest + stand.headroom(), stand.leastLayer());
        long thickness = choice.shelves(c, l).get(0).thickness().micrometres();
        least[l] = thickness + (onTop ? tallest : shortest(post) + least[l + 1]);
      }
      return least;
    }

    Stacking result() {
      return new Stacking(built, posts, choice.overloaded());
    }

    boolean column(int c) {
      if (c == stand.columns()) {
        return true;
      }
      if (!needs.isBuilt(c)) {
        return column(c + 1);
      }
      List<Integer> under = stand.below(c).stream().filter(needs::isBuilt).toList();
      if (under.isEmpty()) {
        return raise(c, -1, 0, stand.column(c).posts(), stand.offFloor(), Long.MAX_VALUE);
      }
      boolean allUnderBuilt = under.size() == stand.below(c).size();
      long underside = topOfPosts[under.get(0)];
      boolean tops = under.stream().allMatch(lower -> topOfPosts[lower] == underside);
      return allUnderBuilt && tops && shelf(c, 0, underside);
    }

    /** Puts the shelves of a level on at a height and goes on above it. */
    private boolean shelf(int c, int l, long underside) {
      List<Shelf> kinds = choice.shelves(c, l);
      long z = underside + kinds.get(0).thickness().micrometres();
      long tallest = needs.level(c, l).tallest();
      if (z + tallest > stand.ceiling() || shelves.meetsKeepOut(c, underside, z)) {
        return false;
      }
      List<Integer> upper = stand.above(c).stream().filter(needs::isBuilt).toList();
      boolean top = l + 1 == needs.levels(c);
      if (top && upper.isEmpty()) {
        built.get(c).add(new LevelStand(underside, z, stand.ceiling() - z, kinds, List.of()));
        if (column(c + 1)) {
          return true;
        }
        built.get(c).remove(l);
        return false;
      }
      List<Point> at = top ? stand.postsOnTop(c, upper) : stand.column(c).posts();
      built.get(c).add(new LevelStand(underside, z, 0, kinds, at));
      long least = Math.max(tallest + stand.headroom(), stand.leastLayer());
      long exact = top ? topAlreadyFixed(c, upper) - z : Long.MAX_VALUE;
      if (raise(c, l, z, at, least, exact < 0 ? -1 : exact)) {
        return true;
      }
      built.get(c).remove(l);
      return false;
    }

    /**
     * Where an earlier column already fixed the tops that this one must agree with, or as good as
     * never.
     */
    private long topAlreadyFixed(int c, List<Integer> upper) {
      for (int up : upper) {
        for (int lower : stand.below(up)) {
          if (lower < c && topOfPosts[lower] > 0) {
            return topOfPosts[lower];
          }
        }
      }
      return Long.MAX_VALUE;
    }

    /**
     * Stands posts on level {@code l} (−1: the floor), lowest first, and goes on with what they
     * carry.
     */
    private boolean raise(int c, int l, long base, List<Point> at, long least, long exact) {
      for (PostLength length : atLeast(least)) {
        long reach = base + length.height() + leastFrom[c][l + 1];
        if (++tries > MOST_TRIES || reach > stand.ceiling()) {
          return false;
        }
        boolean wanted = exact >= Long.MAX_VALUE / 2 || length.height() == exact;
        if (!wanted || shelves.postsMeetKeepOut(at, base, base + length.height())) {
          continue;
        }
        List<int[]> taken = take(length, at.size());
        if (taken.isEmpty()) {
          continue;
        }
        posts.add(new PostGroup(at, base, taken));
        if (goOn(c, l, base + length.height())) {
          return true;
        }
        posts.remove(posts.size() - 1);
        taken.forEach(making -> putBack(making));
      }
      return false;
    }

    private boolean goOn(int c, int l, long top) {
      if (l < 0) {
        return shelf(c, 0, top);
      }
      LevelStand low = built.get(c).get(l);
      built
          .get(c)
          .set(
              l,
              new LevelStand(
                  low.underside(),
                  low.z(),
                  top - low.z() - stand.headroom(),
                  low.shelves(),
                  low.postsOn()));
      if (l + 1 < needs.levels(c)) {
        return shelf(c, l + 1, top);
      }
      topOfPosts[c] = top;
      if (column(c + 1)) {
        return true;
      }
      topOfPosts[c] = 0;
      return false;
    }

    /**
     * Takes equal posts out of the stock, as many of the simplest making as there are; empty if too
     * few.
     */
    private List<int[]> take(PostLength length, int wanted) {
      List<int[]> taken = new ArrayList<>();
      for (int[] making : length.makings()) {
        while (taken.size() < wanted && isThere(making)) {
          for (int kind : making) {
            stock[kind]--;
          }
          taken.add(making);
        }
      }
      if (taken.size() == wanted) {
        return taken;
      }
      taken.forEach(this::putBack);
      return List.of();
    }

    private boolean isThere(int[] making) {
      if (making.length == 2 && making[0] == making[1]) {
        return stock[making[0]] >= 2;
      }
      for (int kind : making) {
        if (stock[kind] < 1) {
          return false;
        }
      }
      return true;
    }

    private void putBack(int[] making) {
      for (int kind : making) {
        stock[kind]++;
      }
    }
  }

  /** The plan of a keep-out: a bar with round ends, chamber frame. */
  static Capsule bar(KeepOut keepOut) {
    return new Capsule(
        keepOut.from().x().millimetres(),
        keepOut.from().y().millimetres(),
        keepOut.to().x().millimetres(),
        keepOut.to().y().millimetres(),
        keepOut.across().millimetres() / 2);
  }

  /** Whether a post at a point would stand in a keep-out, seen from above. */
  static boolean standsIn(KeepOut keepOut, Point at, double radius) {
    Disc post = new Disc(at.x().millimetres(), at.y().millimetres(), radius);
    return Gap.between(post, Pose.HERE, bar(keepOut), Pose.HERE) < 0;
  }
}
