package shelfful.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import shelfful.kiln.Column;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * Remembers the limits of levels by where their shelves lie, so that columns of several plans share
 * them; and a column that is another turned half way round the middle of the chamber shares its
 * worths where the chamber looks the same after half a turn.
 */
final class LevelShelf {
  private static final int HALF_TURN = 180_000;

  private final BoundTask task;
  private final Map<List<ShelfPlace>, LevelLimits> limits = new HashMap<>();
  private final Map<Key, List<LevelWorth>> worths = new HashMap<>();

  private record Key(List<ShelfPlace> places, List<Point> posts) {}

  LevelShelf(BoundTask task) {
    this.task = task;
  }

  /** The limits of a column's levels, in the chamber's frame. */
  LevelLimits limits(Column column) {
    List<ShelfPlace> places = column.places().stream().map(this::plain).toList();
    return limits.computeIfAbsent(places, key -> make(column));
  }

  private LevelLimits make(Column column) {
    List<List<Shelf>> shelves = column.places().stream().map(task::usable).toList();
    return new LevelLimits(
        new LevelRoom(task.studio(), task.kiln(), column, shelves), task.pieces());
  }

  /** What levels can be worth by class of height when posts so long stand at these points. */
  List<LevelWorth> worths(Column column, List<Point> posts, double shortest) {
    Key key = key(column, posts, false);
    List<LevelWorth> known =
        worths.getOrDefault(key, isEven() ? worths.get(key(column, posts, true)) : null);
    if (known != null) {
      return known;
    }
    LevelLimits own = limits(column);
    List<Limit> made = Limit.withoutIdle(own.limits(posts, shortest));
    List<LevelWorth> fresh =
        IntStream.range(0, task.heights().length)
            .mapToObj(k -> new LevelWorth(made, task.counts(), inClass(own, k)))
            .toList();
    worths.put(key, fresh);
    return fresh;
  }

  /** Offers no taller than a class that have a place on a level. */
  int[] inClass(LevelLimits own, int heightClass) {
    long most = task.heights()[heightClass];
    return IntStream.range(0, task.pieces().size())
        .filter(i -> task.pieces().get(i).height() <= most && own.hasPlace(i))
        .toArray();
  }

  private Key key(Column column, List<Point> posts, boolean turned) {
    List<ShelfPlace> places = new ArrayList<>();
    for (ShelfPlace place : column.places()) {
      places.add(plain(turned ? turned(place) : place));
    }
    List<Point> points = new ArrayList<>();
    posts.forEach(point -> points.add(turned ? turned(point) : point));
    points.sort(
        Comparator.comparing((Point p) -> p.x().micrometres())
            .thenComparing(p -> p.y().micrometres()));
    places.sort(Comparator.comparing(ShelfPlace::toString));
    return new Key(places, points);
  }

  private static Point turned(Point point) {
    return new Point(Length.ZERO.minus(point.x()), Length.ZERO.minus(point.y()));
  }

  private static ShelfPlace turned(ShelfPlace place) {
    Angle turn = new Angle(place.turn().millidegrees() + HALF_TURN);
    return new ShelfPlace(place.shelfIds(), turned(place.at()), turn);
  }

  /** The same place by its least turn, if half a turn changes nothing. */
  private ShelfPlace plain(ShelfPlace place) {
    boolean same = task.usable(place).stream().allMatch(shelf -> isEven(shelf.outline()));
    int turn = place.turn().millidegrees();
    return same ? new ShelfPlace(place.shelfIds(), place.at(), new Angle(turn % HALF_TURN)) : place;
  }

  /** Whether the chamber looks the same after half a turn: all but polygons of an odd number. */
  private boolean isEven() {
    FloorPlan floor = task.kiln().chamber().floorPlan();
    return !(floor instanceof FloorPlan.Polygon polygon && polygon.sides() % 2 == 1);
  }

  private static boolean isEven(ShelfOutline outline) {
    return outline instanceof ShelfOutline.FullRound
        || outline instanceof ShelfOutline.Rectangle
        || outline instanceof ShelfOutline.Polygon polygon && polygon.sides() % 2 == 0;
  }
}
