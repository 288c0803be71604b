package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Point;

/** Column plans, their columns, and the places of shelves in them. */
final class ColumnFormat {
  private ColumnFormat() {}

  static Optional<ColumnPlan> readPlan(FieldReader fields) {
    String id = fields.id("id");
    String name = fields.name("name");
    List<Column> columns = fields.objects("columns", ColumnFormat::readColumn);
    return fields.make(() -> new ColumnPlan(id, name, columns));
  }

  private static Optional<Column> readColumn(FieldReader fields) {
    String id = fields.id("id");
    List<String> standsOn = fields.has("standsOn") ? fields.ids("standsOn") : List.of();
    List<ShelfPlace> places = fields.objects("places", ColumnFormat::readPlace);
    List<Point> posts = fields.values("posts", PointFormat::read);
    if (posts.size() < Column.LEAST_POSTS && fields.isStillGood()) {
      fields.fault(
          "posts",
          "A column of " + posts.size() + " posts does not stand.",
          "Give the places of at least three posts.");
    }
    return fields.make(() -> new Column(id, places, posts, standsOn));
  }

  private static Optional<ShelfPlace> readPlace(FieldReader fields) {
    List<String> shelves = fields.ids("shelves");
    Point at = fields.point("at");
    Angle turn = fields.optional("turn", AngleFormat::read).orElse(Angle.ZERO);
    return fields.make(() -> new ShelfPlace(shelves, at, turn));
  }

  static void writePlan(ColumnPlan plan, FieldWriter fields) {
    fields.text("id", plan.id()).text("name", plan.name());
    fields.objects("columns", plan.columns(), ColumnFormat::writeColumn);
  }

  private static void writeColumn(Column column, FieldWriter fields) {
    fields.text("id", column.id());
    if (!column.standsOn().isEmpty()) {
      fields.texts("standsOn", column.standsOn());
    }
    fields.objects("places", column.places(), ColumnFormat::writePlace);
    fields.points("posts", column.posts());
  }

  private static void writePlace(ShelfPlace place, FieldWriter fields) {
    fields.texts("shelves", place.shelfIds()).point("at", place.at()).angle("turn", place.turn());
  }
}
