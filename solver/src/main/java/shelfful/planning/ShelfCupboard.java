package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.geometry.Bound;
import shelfful.geometry.Capsule;
import shelfful.geometry.DiscBound;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.Region;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Shelf;
import shelfful.measure.Mass;
import shelfful.measure.Point;

/**
 * Gives every level its shelves from the stock, and knows where shelves and posts would meet a
 * keep-out.
 */
final class ShelfCupboard {
  private final Stand stand;
  private final LockedStack locked;
  private final List<List<Spot>> spots = new ArrayList<>();
  private final boolean[][] shelfMeets;
  private final double postRadius;
  private final Map<Point, List<KeepOut>> standsIn = new HashMap<>();

  ShelfCupboard(Stand stand, LockedStack locked) {
    this.stand = stand;
    this.locked = locked;
    List<KeepOut> keepOuts = stand.kiln().keepOuts();
    shelfMeets = new boolean[stand.columns()][keepOuts.size()];
    postRadius = stand.cupboard().widest() / 2;
    for (int c = 0; c < stand.columns(); c++) {
      spots.add(stand.spotsOf(c));
      for (int k = 0; k < keepOuts.size(); k++) {
        KeepOut keepOut = keepOuts.get(k);
        shelfMeets[c][k] =
            keepOut.kind().stopsShelves()
                && spots.get(c).stream().anyMatch(spot -> overlaps(spot, keepOut));
      }
    }
  }

  /**
   * The shelves of every level.
   *
   * @param byLevel column, level, place
   * @param overloaded how many carry more than their limit
   */
  record Choice(List<List<List<Shelf>>> byLevel, int overloaded) {
    List<Shelf> shelves(int column, int level) {
      return byLevel.get(column).get(level);
    }
  }

  /** Shelves for every level, or empty when there are too few. */
  Optional<Choice> choose(StackNeeds needs) {
    Map<String, Integer> used = new HashMap<>();
    locked.layers().forEach(layer -> used.merge(layer.shelfId(), 1, Integer::sum));
    List<List<List<Shelf>>> byLevel = new ArrayList<>();
    int overloaded = 0;
    for (int c = 0; c < stand.columns(); c++) {
      byLevel.add(new ArrayList<>());
      for (int l = 0; l < needs.levels(c); l++) {
        long[] grams = needs.level(c, l).grams();
        List<Shelf> shelves =
            l < locked.levels(c)
                ? lockedLevel(c, l, grams, used)
                : level(spots.get(c), grams, used);
        if (shelves.isEmpty()) {
          return Optional.empty();
        }
        byLevel.get(c).add(shelves);
        overloaded += overloaded(shelves, needs.level(c, l).grams());
      }
    }
    return Optional.of(new Choice(byLevel, overloaded));
  }

  /**
   * One shelf for each place, all equally thick; strong enough where there is one, else the
   * strongest in stock.
   */
  private List<Shelf> level(List<Spot> places, long[] grams, Map<String, Integer> used) {
    List<Shelf> strongest = List.of();
    Map<String, Integer> taken = used;
    for (Shelf first : places.get(0).shelves()) {
      Map<String, Integer> tried = new HashMap<>(used);
      List<Shelf> chosen = new ArrayList<>();
      for (Spot spot : places) {
        pick(spot, first, grams[spot.place()], tried).ifPresent(chosen::add);
      }
      boolean complete = chosen.size() == places.size();
      boolean strong = complete && overloaded(chosen, grams) == 0;
      if (strong || complete && (strongest.isEmpty() || carries(chosen) > carries(strongest))) {
        strongest = chosen;
        taken = tried;
      }
      if (strong) {
        break;
      }
    }
    used.putAll(taken);
    return strongest;
  }

  /** The shelves that are locked, and beside them, where only some are, equally thick ones. */
  private List<Shelf> lockedLevel(int column, int level, long[] grams, Map<String, Integer> used) {
    Shelf like = shelf(locked.level(stand, column, level).get(0).shelfId());
    List<Shelf> chosen = new ArrayList<>();
    for (Spot spot : spots.get(column)) {
      locked
          .layer(column, level, spot.place())
          .map(layer -> shelf(layer.shelfId()))
          .or(() -> pick(spot, like, grams[spot.place()], used))
          .ifPresent(chosen::add);
    }
    return chosen.size() == spots.get(column).size() ? chosen : List.of();
  }

  private Shelf shelf(String id) {
    return stand.request().studio().shelf(id).orElseThrow();
  }

  /** What each of some shelves carries at least, in grams. */
  private static long carries(List<Shelf> shelves) {
    return shelves.stream()
        .mapToLong(shelf -> shelf.massLimit().map(Mass::grams).orElse(Long.MAX_VALUE))
        .min()
        .orElse(0);
  }

  private static Optional<Shelf> pick(
      Spot spot, Shelf like, long grams, Map<String, Integer> used) {
    Shelf found = null;
    for (Shelf shelf : spot.shelves()) {
      boolean there = used.getOrDefault(shelf.id(), 0) < shelf.count();
      if (there && shelf.thickness().equals(like.thickness())) {
        if (found == null || isTooWeak(found, grams) && !isTooWeak(shelf, grams)) {
          found = shelf;
        }
      }
    }
    if (found != null) {
      used.merge(found.id(), 1, Integer::sum);
    }
    return Optional.ofNullable(found);
  }

  private static int overloaded(List<Shelf> shelves, long[] grams) {
    int count = 0;
    for (int p = 0; p < shelves.size(); p++) {
      count += isTooWeak(shelves.get(p), grams[p]) ? 1 : 0;
    }
    return count;
  }

  private static boolean isTooWeak(Shelf shelf, long grams) {
    return shelf.massLimit().isPresent() && shelf.massLimit().get().grams() < grams;
  }

  /**
   * Whether a column's shelves between two heights would lie in a thermocouple or a peephole line.
   */
  boolean meetsKeepOut(int column, long underside, long top) {
    List<KeepOut> keepOuts = stand.kiln().keepOuts();
    for (int k = 0; k < keepOuts.size(); k++) {
      if (shelfMeets[column][k] && sharesHeight(keepOuts.get(k), underside, top)) {
        return true;
      }
    }
    return false;
  }

  /** Whether any of the posts between two heights would stand in a keep-out. */
  boolean postsMeetKeepOut(List<Point> at, long base, long top) {
    for (Point point : at) {
      for (KeepOut keepOut : standsIn.computeIfAbsent(point, this::keepOutsAt)) {
        if (sharesHeight(keepOut, base, top)) {
          return true;
        }
      }
    }
    return false;
  }

  private List<KeepOut> keepOutsAt(Point point) {
    return stand.kiln().keepOuts().stream()
        .filter(keepOut -> KeepOutPlan.standsIn(keepOut, point, postRadius))
        .toList();
  }

  private static boolean sharesHeight(KeepOut keepOut, long from, long to) {
    return keepOut.bottom().micrometres() < to && keepOut.top().micrometres() > from;
  }

  /** Whether a shelf may overlap a keep-out, seen from above; leans to yes near corners. */
  private static boolean overlaps(Spot spot, KeepOut keepOut) {
    Capsule bar = KeepOutPlan.bar(keepOut);
    double[] from = spot.frame().toShelf(bar.x1(), bar.y1());
    double[] to = spot.frame().toShelf(bar.x2(), bar.y2());
    return spot.shelves().stream()
        .map(shelf -> KilnRegions.shelf(shelf.outline()))
        .anyMatch(region -> !isOutside(region, from, to, bar.radius()));
  }

  private static boolean isOutside(Region region, double[] from, double[] to, double radius) {
    for (Bound bound : region.bounds()) {
      if (bound instanceof HalfPlane wall) {
        double nearest =
            Math.min(
                wall.nx() * from[0] + wall.ny() * from[1], wall.nx() * to[0] + wall.ny() * to[1]);
        if (nearest - radius > wall.offset()) {
          return true;
        }
      } else if (bound instanceof DiscBound disc
          && distance(disc, from, to) - radius > disc.radius()) {
        return true;
      }
    }
    return false;
  }

  private static double distance(DiscBound disc, double[] from, double[] to) {
    double dx = to[0] - from[0];
    double dy = to[1] - from[1];
    double length = dx * dx + dy * dy;
    double along =
        length == 0 ? 0 : ((disc.x() - from[0]) * dx + (disc.y() - from[1]) * dy) / length;
    double t = Math.max(0, Math.min(1, along));
    return Math.hypot(from[0] + t * dx - disc.x(), from[1] + t * dy - disc.y());
  }
}
