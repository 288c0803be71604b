package shelfful.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Point;
import shelfful.studio.Studio;

/**
 * Checks that the columns of a plan can stand in their kiln: shelves within the chamber and beside
 * each other, posts under shelves and straight over posts.
 */
final class ColumnPlanCheck {
  /** Less than a saw's breadth; the judge of loads decides to the micrometre. */
  private static final double SLACK = 0.1;

  private final Studio studio;
  private final Kiln kiln;
  private final FieldReader document;
  private final double postRadius;

  ColumnPlanCheck(Studio studio, Kiln kiln, FieldReader document) {
    this.studio = studio;
    this.kiln = kiln;
    this.document = document;
    this.postRadius =
        studio.posts().stream()
            .map(Post::across)
            .mapToDouble(across -> across.millimetres() / 2)
            .max()
            .orElse(0);
  }

  void check(ColumnPlan plan) {
    for (Column column : plan.columns()) {
      column.places().forEach(this::liesWithinTheChamber);
      // A post may stick out from under its shelf, so without any in stock nothing can be said.
      if (!studio.posts().isEmpty()) {
        postsAreUnderShelves(column);
        column.places().forEach(place -> isCarried(place, column));
      }
      postsStandOverPosts(column, plan);
    }
    shelvesLieBesideEachOther(plan);
  }

  private void liesWithinTheChamber(ShelfPlace place) {
    for (int i = 0; i < place.shelfIds().size(); i++) {
      Optional<PlacedShelf> shelf = placed(place, place.shelfIds().get(i));
      double past = shelf.map(s -> s.reachesPast(kiln.chamber().floorPlan())).orElse(0.0);
      if (past > SLACK) {
        fault(
            pathOf(place) + "/shelves/" + i,
            "shelves",
            "The shelf "
                + Shown.quoted(place.shelfIds().get(i))
                + " reaches "
                + oneDecimal(past)
                + " mm past the wall of the chamber.",
            "Move it, or use a smaller shelf.");
      }
    }
  }

  private void postsAreUnderShelves(Column column) {
    List<PlacedShelf> shelves = new ArrayList<>();
    column.places().forEach(place -> shelves.addAll(placed(place)));
    for (int i = 0; i < column.posts().size() && !shelves.isEmpty(); i++) {
      Point post = column.posts().get(i);
      if (shelves.stream().noneMatch(shelf -> shelf.liesOn(post, postRadius))) {
        fault(
            pathOf(column) + "/posts/" + i,
            "posts",
            "The post at " + shown(post) + " is outside every shelf of its column.",
            "Move it under a shelf.");
      }
    }
  }

  private void isCarried(ShelfPlace place, Column column) {
    for (PlacedShelf shelf : placed(place)) {
      List<Point> under =
          column.posts().stream().filter(post -> shelf.liesOn(post, postRadius)).toList();
      if (under.size() < Column.LEAST_POSTS) {
        fault(
            pathOf(place),
            "places",
            "The shelf " + Shown.quoted(shelf.id()) + " lies on " + under.size() + " posts here.",
            "A shelf needs at least three posts under it.");
      } else if (!shelf.middleIsWithin(under)) {
        fault(
            pathOf(place),
            "places",
            "The middle of the shelf "
                + Shown.quoted(shelf.id())
                + " is not within its posts, so it would tip.",
            "Move the posts further out on the side it leans to.");
      }
    }
  }

  private void postsStandOverPosts(Column column, ColumnPlan plan) {
    Set<Point> below = new HashSet<>();
    for (Column other : plan.columns()) {
      if (column.standsOn().contains(other.id())) {
        below.addAll(other.posts());
      }
    }
    for (int i = 0; i < column.posts().size() && !column.standsOn().isEmpty(); i++) {
      Point post = column.posts().get(i);
      if (!below.contains(post)) {
        fault(
            pathOf(column) + "/posts/" + i,
            "posts",
            "The post at " + shown(post) + " stands over no post of the column below.",
            "Give the column below a post at the same place, or move this one.");
      }
    }
  }

  private void shelvesLieBesideEachOther(ColumnPlan plan) {
    for (int i = 0; i < plan.columns().size(); i++) {
      Column column = plan.columns().get(i);
      beside(column.places(), column.places(), true);
      for (int j = 0; j < i; j++) {
        if (!Columns.oneStandsOnTheOther(plan, column, plan.columns().get(j))) {
          beside(column.places(), plan.columns().get(j).places(), false);
        }
      }
    }
  }

  private void beside(List<ShelfPlace> places, List<ShelfPlace> others, boolean sameColumn) {
    for (int i = 0; i < places.size(); i++) {
      for (int j = 0; j < (sameColumn ? i : others.size()); j++) {
        ShelfPlace other = others.get(j);
        if (overlap(places.get(i), other)) {
          fault(
              pathOf(places.get(i)),
              "places",
              "A shelf here would overlap one of " + pathOf(other) + ".",
              "Move the two apart.");
        }
      }
    }
  }

  private boolean overlap(ShelfPlace place, ShelfPlace other) {
    List<PlacedShelf> others = placed(other);
    return placed(place).stream()
        .anyMatch(a -> others.stream().anyMatch(b -> a.overlaps(b, SLACK)));
  }

  private List<PlacedShelf> placed(ShelfPlace place) {
    return place.shelfIds().stream().flatMap(id -> placed(place, id).stream()).toList();
  }

  private Optional<PlacedShelf> placed(ShelfPlace place, String shelfId) {
    return studio.shelf(shelfId).map(shelf -> PlacedShelf.of(shelf, place));
  }

  private void fault(String path, String field, String wrong, String mend) {
    document.problems().add(path, field, wrong, mend);
  }

  private String pathOf(Object thing) {
    return document.madeAt().pathOf(thing);
  }

  private static String shown(Point point) {
    return "[" + FileNumber.written(point.x()) + ", " + FileNumber.written(point.y()) + "]";
  }

  private static String oneDecimal(double millimetres) {
    return FileNumber.of(Math.round(millimetres * 10) / 10.0).toPlainString();
  }
}
