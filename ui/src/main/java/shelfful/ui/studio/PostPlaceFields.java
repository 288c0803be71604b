package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.studio.Studio;

/**
 * Where the posts of a column stand. Posts stand over posts, so one that is moved takes with it
 * those of the other columns at the same place.
 */
record PostPlaceFields(FieldMaker make, Place<ColumnPlan> plan, int column) {

  List<Field> of(Studio studio) {
    List<Field> fields = new ArrayList<>();
    for (int i = 0; i < plan.get().apply(studio).columns().get(column).posts().size(); i++) {
      Place<Point> post = post(i);
      fields.add(length("postX", i, post.part("0", Point::x, (at, x) -> new Point(x, at.y()))));
      fields.add(length("postY", i, post.part("1", Point::y, (at, y) -> new Point(at.x(), y))));
    }
    return fields;
  }

  private Field length(String key, int number, Place<Length> place) {
    Field plain = make.length(key, place, Bounds.PLACE);
    String label = make.words().of("field." + key + "Of", number + 1);
    return new Field(
        label, plain.path(), plain.kind(), plain.shown(), plain.put(), plain.choices());
  }

  private Place<Point> post(int index) {
    Function<ColumnPlan, Point> get = now -> now.columns().get(column).posts().get(index);
    return plan.part(
        "columns/" + column + "/posts/" + index, get, (now, to) -> moved(now, get.apply(now), to));
  }

  private static ColumnPlan moved(ColumnPlan plan, Point from, Point to) {
    List<Column> columns =
        plan.columns().stream()
            .map(
                one ->
                    new Column(
                        one.id(),
                        one.places(),
                        one.posts().stream().map(at -> at.equals(from) ? to : at).toList(),
                        one.standsOn()))
            .toList();
    return new ColumnPlan(plan.id(), plan.name(), columns);
  }
}
