package shelfful.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shelfful.geometry.Region;
import shelfful.kiln.Column;
import shelfful.kiln.Shelf;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.planning.KilnPlan;

/** The levels of one column: what each can be worth by the tallest ware on it. */
final class ColumnLevels {
  private final BoundTask task;
  private final Column column;
  private final long thickness;
  private final int mostLevels;
  private final List<List<Integer>> shelfKinds;
  private final LevelLimits limits;
  private final List<LevelWorth> between;
  private final List<LevelWorth> top;
  private final boolean covered;
  private Prices prices;
  private List<Pile> steps;
  private Frontier crown;

  ColumnLevels(BoundTask task, Column column) {
    this.task = task;
    this.column = column;
    List<List<Shelf>> shelves = column.places().stream().map(task::usable).toList();
    this.shelfKinds =
        shelves.stream().map(kinds -> kinds.stream().map(task::shelfIndex).toList()).toList();
    this.thickness =
        shelves.stream()
            .flatMap(List::stream)
            .map(Shelf::thickness)
            .mapToLong(Length::micrometres)
            .min()
            .orElse(1);
    this.mostLevels = mostLevels(shelves);
    this.covered = shelves.stream().allMatch(ColumnLevels::isAlike);
    this.limits = task.levelShelf().limits(column);
    this.between = worths(column.posts());
    this.top = worths(List.of());
  }

  /** So many levels at most as the scarcest place, and all places together, have shelves for. */
  private static int mostLevels(List<List<Shelf>> shelves) {
    int most = stock(shelves.stream().flatMap(List::stream).toList()) / shelves.size();
    for (List<Shelf> kinds : shelves) {
      most = Math.min(most, stock(kinds));
    }
    return most;
  }

  private static int stock(List<Shelf> kinds) {
    return kinds.stream().distinct().mapToInt(Shelf::count).sum();
  }

  private static boolean isAlike(List<Shelf> kinds) {
    return kinds.stream().map(Shelf::outline).distinct().count() <= 1;
  }

  /**
   * What levels can be worth by class of height when posts stand at these points. Under shelves of
   * one outline nothing is taller than the posts; else they may be as short as any there are.
   */
  private List<LevelWorth> worths(List<Point> posts) {
    double shortest = covered ? Double.POSITIVE_INFINITY : task.shortestPost();
    return task.levelShelf().worths(column, posts, shortest);
  }

  /** Offers no taller than a class. */
  int[] inClass(int heightClass) {
    return task.levelShelf().inClass(limits, heightClass);
  }

  /** Whether a piece of an offer can stand on the lowest level, with nothing over it. */
  boolean canHold(int offer) {
    long most = -1;
    for (int p = 0; p < task.postChoice().size(); p++) {
      long length = task.postChoice().length(p);
      if (length >= leastFirst() && task.postChoice().isThere(p, posts())) {
        most = Math.max(most, task.ceiling() - length - thickness);
      }
    }
    return canBeBuilt() && limits.hasPlace(offer) && task.pieces().get(offer).height() <= most;
  }

  /** Whether another is the same column, turned half way round. */
  boolean isLike(ColumnLevels other) {
    return between == other.between && top == other.top;
  }

  LevelLimits limits() {
    return limits;
  }

  Column column() {
    return column;
  }

  int posts() {
    return column.posts().size();
  }

  long thickness() {
    return thickness;
  }

  /** No more levels than there are shelves for. */
  int mostLevels() {
    return mostLevels;
  }

  /** Whether every level can be built at all. */
  boolean canBeBuilt() {
    return mostLevels > 0;
  }

  /** The outlines that its shelves may have, all places together. */
  List<Region> outlines() {
    return column.places().stream()
        .flatMap(place -> task.usable(place).stream().map(shelf -> KilnPlan.shelf(shelf, place)))
        .distinct()
        .toList();
  }

  /** Whether every place takes shelves of one outline only. */
  boolean isUniform() {
    return covered;
  }

  /** The least length of its lowest posts: what stands on another column may stand on any. */
  private long leastFirst() {
    return column.standsOn().isEmpty() ? task.offFloor() : 0;
  }

  /** The kinds of shelf of one level that cost least. */
  List<Integer> cheapestShelves(Prices at) {
    return shelfKinds.stream().map(at::cheapest).toList();
  }

  private double shelfPrice() {
    return cheapestShelves(prices).stream().mapToDouble(kind -> prices.shelves()[kind]).sum();
  }

  double postPrice(int length) {
    int[] way = task.postChoice().cheapest(length, prices.posts());
    return posts() * PostChoice.cost(way, prices.posts());
  }

  /** Makes ready for the prices of a step. */
  void prepare(Prices now) {
    this.prices = now;
    if (!canBeBuilt()) {
      return;
    }
    List<Pile> tops = new ArrayList<>();
    tops.add(new Pile(0, -shelfPrice(), null, -1, null));
    double[] worthBetween = new double[between.size()];
    for (int k = 0; k < between.size(); k++) {
      worthBetween[k] = between.get(k).most(now.worth());
      double worth = top.get(k).most(now.worth()) - shelfPrice();
      tops.add(new Pile(task.heights()[k], worth, top.get(k), -1, null));
    }
    crown = Frontier.of(tops);
    List<Pile> all = new ArrayList<>();
    for (int p = 0; p < task.postChoice().size(); p++) {
      if (task.postChoice().isThere(p, posts())) {
        int k = classUnder(p);
        double worth = (k < 0 ? 0 : worthBetween[k]) - postPrice(p) - shelfPrice();
        long height = task.postChoice().length(p) + thickness;
        all.add(new Pile(height, worth, k < 0 ? null : between.get(k), p, null));
      }
    }
    steps = Frontier.of(all).piles();
  }

  /** The class of ware that stands under shelves on posts of a length. */
  private int classUnder(int post) {
    return covered
        ? task.classUnder(task.postChoice().length(post) - task.headroom())
        : task.heights().length - 1;
  }

  /** The best that a column can hold from the top of its lowest shelf up to the ceiling. */
  Frontier piles() {
    Frontier all = crown;
    Frontier last = crown;
    for (int level = 1; level < mostLevels && !last.piles().isEmpty(); level++) {
      last = last.on(steps, task.ceiling());
      all = all.or(last);
    }
    return all;
  }

  /**
   * A column on the floor.
   *
   * @param worth posts paid
   * @param first index of the length of its lowest posts
   * @param lowest level and all over it
   */
  record Standing(double worth, int first, Pile lowest) {}

  /** The best column standing on the floor, or null. */
  Standing onFloor() {
    if (!canBeBuilt()) {
      return null;
    }
    Frontier frontier = piles();
    Standing best = null;
    for (int p = 0; p < task.postChoice().size(); p++) {
      long length = task.postChoice().length(p);
      if (length >= leastFirst() && task.postChoice().isThere(p, posts())) {
        Pile pile = frontier.best(task.ceiling() - length - thickness);
        if (pile != null && (best == null || pile.worth() - postPrice(p) > best.worth())) {
          best = new Standing(pile.worth() - postPrice(p), p, pile);
        }
      }
    }
    return best;
  }

  /**
   * A column up to the shelf of its highest level, whose content is not counted yet.
   *
   * @param top of that shelf over the floor
   * @param worth of the levels below, posts and shelves paid
   * @param first index of the length of its lowest posts
   * @param below levels under the highest, one in another: the highest of them first
   */
  record Rise(long top, double worth, int first, Pile below) {}

  /** Every way up that is worth more than all lower ones, lowest first. */
  List<Rise> rises() {
    List<Rise> all = new ArrayList<>();
    if (!canBeBuilt()) {
      return all;
    }
    List<Rise> last = new ArrayList<>();
    for (int p = 0; p < task.postChoice().size(); p++) {
      long length = task.postChoice().length(p);
      if (length >= leastFirst() && task.postChoice().isThere(p, posts())) {
        last.add(new Rise(length + thickness, -postPrice(p) - shelfPrice(), p, null));
      }
    }
    for (int level = 1; level <= mostLevels && !last.isEmpty(); level++) {
      last = best(last);
      all.addAll(last);
      List<Rise> next = new ArrayList<>();
      for (Rise rise : last) {
        for (Pile step : steps) {
          long top = rise.top + step.height();
          if (top <= task.ceiling()) {
            Pile below = new Pile(0, 0, step.level(), step.post(), rise.below);
            next.add(new Rise(top, rise.worth + step.worth(), rise.first, below));
          }
        }
      }
      last = next;
    }
    return best(all);
  }

  private static List<Rise> best(List<Rise> all) {
    all.sort(
        Comparator.comparingLong(Rise::top)
            .thenComparing(Comparator.comparingDouble(Rise::worth).reversed()));
    List<Rise> kept = new ArrayList<>();
    double most = Double.NEGATIVE_INFINITY;
    for (Rise rise : all) {
      if (rise.worth > most) {
        most = rise.worth;
        kept.add(rise);
      }
    }
    return kept;
  }
}
