package shelfful.bound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import shelfful.geometry.Region;
import shelfful.measure.Point;

/**
 * The highest level of a column that others stand on. The others may stand on posts of different
 * lengths, or not be built; ware too tall for one of them stands outside of its shelves.
 */
final class CarryingLevel {
  /** A column that is not built leaves every height. */
  static final int OPEN = Integer.MAX_VALUE;

  private final BoundTask task;
  private final ColumnLevels lower;
  private final List<ColumnLevels> uppers;
  private final List<Limit> limits;
  private final List<LevelWorth> roomy = new ArrayList<>();
  private final Map<List<Integer>, LevelWorth> exact = new HashMap<>();
  private final Map<List<Integer>, List<ConvexPolygon>> outside = new HashMap<>();
  private double[] roomyWorth;
  private double[] worth;

  /** For a lower column and those of its upper columns that are built. */
  CarryingLevel(BoundTask task, ColumnLevels lower, List<ColumnLevels> uppers) {
    this.task = task;
    this.lower = lower;
    this.uppers = uppers;
    List<Point> posts =
        uppers.stream().flatMap(upper -> upper.column().posts().stream()).distinct().toList();
    this.limits = lower.limits().limits(posts, task.shortestPost());
    for (int k = 0; k < task.heights().length; k++) {
      roomy.add(new LevelWorth(limits, task.counts(), lower.inClass(k)));
    }
  }

  void prepare(Prices prices) {
    worth = prices.worth();
    roomyWorth = roomy.stream().mapToDouble(level -> level.most(worth)).toArray();
  }

  /** What a piece of each offer is worth in this step. */
  double[] worth() {
    return worth;
  }

  /** No more than this can be worth what stands under upper columns with these classes. */
  double atMost(List<Integer> classes) {
    int tallest = tallest(classes);
    return tallest < 0 ? 0 : roomyWorth[tallest];
  }

  private int tallest(List<Integer> classes) {
    int most = -1;
    for (int k : classes) {
      most = Math.max(most, k);
    }
    boolean open = most == OPEN || !isCovered();
    return open ? task.heights().length - 1 : most;
  }

  /** Whether nothing can stand beside all the upper columns' shelves. */
  private boolean isCovered() {
    List<Integer> none = new ArrayList<>(Collections.nCopies(uppers.size(), -1));
    return outside(none).stream().allMatch(ConvexPolygon::isEmpty);
  }

  /** The level under upper columns with these classes, its limits complete. */
  LevelWorth level(List<Integer> classes) {
    return exact.computeIfAbsent(classes, this::make);
  }

  private LevelWorth make(List<Integer> classes) {
    int tallest = tallest(classes);
    if (tallest < 0) {
      return null;
    }
    List<Limit> all = new ArrayList<>(limits);
    for (int u = 0; u < classes.size(); u++) {
      if (classes.get(u) != OPEN) {
        List<Integer> alone = new ArrayList<>(Collections.nCopies(classes.size(), OPEN));
        alone.set(u, classes.get(u));
        all.addAll(lower.limits().tall(blocked(alone)));
      }
    }
    List<ConvexPolygon> places = blocked(classes);
    int[] in =
        IntStream.of(lower.inClass(tallest))
            .filter(i -> !isBlocked(i, classes) || !places.get(i).isEmpty())
            .toArray();
    return new LevelWorth(all, task.counts(), in);
  }

  private boolean isBlocked(int offer, List<Integer> classes) {
    long height = task.pieces().get(offer).height();
    return classes.stream().anyMatch(k -> k != OPEN && height > task.heightOf(k));
  }

  /** Where the axes of ware can be that is too tall for some upper column; empty for the rest. */
  private List<ConvexPolygon> blocked(List<Integer> classes) {
    List<ConvexPolygon> places = new ArrayList<>();
    for (int i = 0; i < task.pieces().size(); i++) {
      long height = task.pieces().get(i).height();
      List<Integer> from = new ArrayList<>();
      for (int k : classes) {
        from.add(k != OPEN && height > task.heightOf(k) ? -1 : OPEN);
      }
      places.add(from.contains(-1) ? outside(from).get(i) : ConvexPolygon.nowhere());
    }
    return places;
  }

  /** Where the axis of each offer can be outside of the shelves of the columns marked −1. */
  private List<ConvexPolygon> outside(List<Integer> marked) {
    return outside.computeIfAbsent(marked, this::makeOutside);
  }

  private List<ConvexPolygon> makeOutside(List<Integer> marked) {
    List<Region> shelves = new ArrayList<>();
    for (int u = 0; u < marked.size(); u++) {
      if (marked.get(u) != OPEN && uppers.get(u).isUniform()) {
        shelves.addAll(uppers.get(u).outlines());
      }
    }
    List<ConvexPolygon> places = new ArrayList<>();
    for (int i = 0; i < task.pieces().size(); i++) {
      ConvexPolygon axis = lower.limits().axis(i);
      places.add(
          axis.isEmpty() ? axis : Leftover.of(axis, shelves, task.pieces().get(i).thinnest()));
    }
    return places;
  }
}
