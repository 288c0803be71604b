package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * What can be added to a column of a plan and taken from it. Whether it can stand like that is for
 * the studio's judge to say.
 *
 * @param index of the column, from 0
 */
record ColumnSteps(int index) {
  private static final int HALF_TURN = 180;

  private static ColumnPlan with(ColumnPlan plan, List<Column> columns) {
    return new ColumnPlan(plan.id(), plan.name(), columns);
  }

  private ColumnPlan with(ColumnPlan plan, Column other) {
    return with(plan, Place.replaced(plan.columns(), index, other));
  }

  private Column of(ColumnPlan plan) {
    return plan.columns().get(index);
  }

  /** One more shelf at each level, over against the last one, as a half is to another half. */
  ColumnPlan withPlace(ColumnPlan plan) {
    Column now = of(plan);
    ShelfPlace last = now.places().get(now.places().size() - 1);
    ShelfPlace over =
        new ShelfPlace(
            last.shelfIds(), last.at(), Angle.ofDegrees(last.turn().degrees() + HALF_TURN));
    return with(
        plan, new Column(now.id(), Place.and(now.places(), over), now.posts(), now.standsOn()));
  }

  ColumnPlan withoutLastPlace(ColumnPlan plan) {
    Column now = of(plan);
    List<ShelfPlace> fewer = Place.without(now.places(), now.places().size() - 1);
    return with(plan, new Column(now.id(), fewer, now.posts(), now.standsOn()));
  }

  /** One more post, between the first and the last, in this column and in those it stands on. */
  ColumnPlan withPost(ColumnPlan plan) {
    Column now = of(plan);
    Point first = now.posts().get(0);
    Point last = now.posts().get(now.posts().size() - 1);
    Point between = new Point(middle(first.x(), last.x()), middle(first.y(), last.y()));
    Set<String> under = under(plan, now);
    under.add(now.id());
    List<Column> columns =
        plan.columns().stream()
            .map(one -> under.contains(one.id()) ? and(one, between) : one)
            .toList();
    return with(plan, columns);
  }

  private static Length middle(Length one, Length other) {
    return new Length((one.micrometres() + other.micrometres()) / 2);
  }

  private static Column and(Column column, Point post) {
    return column.posts().contains(post)
        ? column
        : new Column(
            column.id(), column.places(), Place.and(column.posts(), post), column.standsOn());
  }

  private static Set<String> under(ColumnPlan plan, Column top) {
    Set<String> found = new HashSet<>(top.standsOn());
    plan.columns().stream()
        .filter(one -> top.standsOn().contains(one.id()))
        .forEach(one -> found.addAll(under(plan, one)));
    return found;
  }

  ColumnPlan withoutLastPost(ColumnPlan plan) {
    Column now = of(plan);
    List<Point> fewer = Place.without(now.posts(), now.posts().size() - 1);
    return with(plan, new Column(now.id(), now.places(), fewer, now.standsOn()));
  }

  /** Another column with the same shelves and posts, standing on this one. */
  ColumnPlan withColumnOnTop(ColumnPlan plan) {
    Column now = of(plan);
    Set<String> taken = plan.columns().stream().map(Column::id).collect(Collectors.toSet());
    String id = now.id() + "-2";
    for (int number = 3; taken.contains(id); number++) {
      id = now.id() + "-" + number;
    }
    List<Column> columns = new ArrayList<>(plan.columns());
    columns.add(new Column(id, now.places(), now.posts(), List.of(now.id())));
    return with(plan, columns);
  }

  ColumnPlan without(ColumnPlan plan) {
    return with(plan, Place.without(plan.columns(), index));
  }
}
