package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.kiln.Shelf;
import shelfful.load.PostUnder;
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
  private final LockedStack locked;
  private final Footing footing;
  private final Map<Long, List<PostLength>> longEnough = new HashMap<>();

  StackFitter(Stand stand, PostCupboard cupboard) {
    this(stand, cupboard, LockedStack.NOTHING, Footing.FREE);
  }

  /**
   * One that leaves locked shelves and posts as they are, and puts levels with ware that stays only
   * where it can stand.
   */
  StackFitter(Stand stand, PostCupboard cupboard, LockedStack locked, Footing footing) {
    this.stand = stand;
    this.cupboard = cupboard;
    this.locked = locked;
    this.footing = footing;
    this.shelves = new ShelfCupboard(stand, locked);
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

  /** Where posts are to be raised, and how high: see {@code Search.raise}. */
  private record Rise(int c, int l, long base, List<Point> at, long least, long exact) {
    boolean holds(PostUnder post) {
      return post.base().micrometres() == base && at.contains(post.at());
    }

    boolean mayBe(long height) {
      return height >= least && (exact >= Long.MAX_VALUE / 2 || height == exact);
    }
  }

  /** One depth-first search; the path to the current node is kept in the fields. */
  private final class Search {
    private final StackNeeds needs;
    private final ShelfCupboard.Choice choice;
    private final PostStock stock = new PostStock(cupboard.stock());
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
      if (!locked.isNothing()) {
        locked.posts().forEach(post -> stock.takeOut(cupboard.making(post.postIds())));
      }
      LeastHeights least = new LeastHeights(stand, needs, choice, StackFitter.this::shortest);
      for (int c = stand.columns() - 1; c >= 0; c--) {
        leastFrom[c] = least.from(c, leastFrom);
      }
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
      if (!locked.isNothing()
          && locked.level(stand, c, l).stream().anyMatch(layer -> layer.z().micrometres() != z)) {
        return false;
      }
      List<Integer> upper = stand.above(c).stream().filter(needs::isBuilt).toList();
      boolean top = l + 1 == needs.levels(c);
      if (top && upper.isEmpty()) {
        LevelStand last = new LevelStand(underside, z, stand.ceiling() - z, kinds, List.of());
        built.get(c).add(last);
        if (footing.allows(c, l, last) && column(c + 1)) {
          return true;
        }
        built.get(c).remove(l);
        return false;
      }
      List<Point> at = top ? stand.postsOnTop(c, upper) : stand.column(c).posts();
      LevelStand low = new LevelStand(underside, z, 0, kinds, at);
      built.get(c).add(low);
      long least = Math.max(tallest + stand.headroom(), stand.leastLayer());
      long exact = top ? topAlreadyFixed(c, upper) - z : Long.MAX_VALUE;
      if (footing.allows(c, l, low) && raise(c, l, z, at, least, exact < 0 ? -1 : exact)) {
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
      List<PostUnder> staying = lockedOn(c, l);
      if (!staying.isEmpty()) {
        return raiseLocked(new Rise(c, l, base, at, least, exact), staying);
      }
      for (PostLength length : atLeast(least)) {
        long reach = base + length.height() + leastFrom[c][l + 1];
        if (++tries > MOST_TRIES || reach > stand.ceiling()) {
          return false;
        }
        boolean wanted = exact >= Long.MAX_VALUE / 2 || length.height() == exact;
        if (!wanted || shelves.postsMeetKeepOut(at, base, base + length.height())) {
          continue;
        }
        List<int[]> taken = stock.take(length, at.size());
        if (taken.isEmpty()) {
          continue;
        }
        posts.add(new PostGroup(at, base, taken));
        if (goOn(c, l, base + length.height())) {
          return true;
        }
        posts.remove(posts.size() - 1);
        taken.forEach(stock::putBack);
      }
      return false;
    }

    /** As {@link #raise}, where some of the posts or all are locked. */
    private boolean raiseLocked(Rise rise, List<PostUnder> staying) {
      int[] like = cupboard.making(staying.get(0).postIds());
      long height = cupboard.height(like);
      boolean there = staying.stream().allMatch(rise::holds);
      if (!there || !rise.mayBe(height) || rise.base() + height > stand.ceiling()) {
        return false;
      }
      Map<Point, int[]> makings = new HashMap<>();
      staying.forEach(post -> makings.put(post.at(), cupboard.making(post.postIds())));
      List<Point> others = rise.at().stream().filter(at -> !makings.containsKey(at)).toList();
      List<int[]> taken = takeLike(like, others.size());
      if (taken.size() < others.size()
          || shelves.postsMeetKeepOut(rise.at(), rise.base(), rise.base() + height)) {
        taken.forEach(stock::putBack);
        return false;
      }
      for (int i = 0; i < others.size(); i++) {
        makings.put(others.get(i), taken.get(i));
      }
      List<int[]> inOrder = rise.at().stream().map(makings::get).toList();
      posts.add(new PostGroup(rise.at(), rise.base(), inOrder));
      if (goOn(rise.c(), rise.l(), rise.base() + height)) {
        return true;
      }
      posts.remove(posts.size() - 1);
      taken.forEach(stock::putBack);
      return false;
    }

    /** Takes as many posts as high and as wide as one; fewer when there are too few. */
    private List<int[]> takeLike(int[] like, int wanted) {
      return cupboard.lengths().stream()
          .filter(length -> length.height() == cupboard.height(like))
          .filter(length -> length.across() == cupboard.across(like))
          .findFirst()
          .map(length -> stock.take(length, wanted))
          .orElse(List.of());
    }

    /** The locked posts that stand on a level. */
    private List<PostUnder> lockedOn(int c, int l) {
      if (locked.isNothing()) {
        return List.of();
      }
      if (l + 1 < needs.levels(c)) {
        return locked.postsUnder(stand, c, l + 1);
      }
      return stand.above(c).stream()
          .filter(needs::isBuilt)
          .flatMap(upper -> locked.postsUnder(stand, upper, 0).stream())
          .distinct()
          .toList();
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
      if (!footing.allows(c, l, built.get(c).get(l))) {
        return false;
      }
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
  }
}
