package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Point;
import shelfful.studio.Studio;

/** Where the shelves of each level of a column lie, and of which kind they are. */
record ShelfPlaceFields(FieldMaker make, Place<ColumnPlan> plan, int column) {
  private static final double MOST_TURN = 359.999;

  List<Field> of(Studio studio) {
    Place<Column> one = plan.partIn("columns", ColumnPlan::columns, column);
    List<Field.Choice> kinds =
        studio.shelves().stream().map(shelf -> new Field.Choice(shelf.id(), shelf.name())).toList();
    List<Field> fields = new ArrayList<>();
    for (int i = 0; i < one.get().apply(studio).places().size(); i++) {
      Place<ShelfPlace> place = one.partIn("places", Column::places, i);
      Place<Point> at = place.part("at", ShelfPlace::at);
      Place<Double> turn =
          place.part(
              "turn",
              now -> now.turn().degrees(),
              (now, is) -> Component.with(now, "turn", Angle.ofDegrees(is)));
      fields.add(
          make.choice(
              "shelfHere",
              place,
              kinds,
              now -> now.shelfIds().get(0),
              (now, is) -> Component.with(now, "shelfIds", preferring(now.shelfIds(), is))));
      fields.add(make.length("shelfX", at.part("x", Point::x), Bounds.PLACE));
      fields.add(make.length("shelfY", at.part("y", Point::y), Bounds.PLACE));
      fields.add(make.number("shelfTurn", turn, 0, MOST_TURN));
    }
    return fields;
  }

  /** Another kind in place of the preferred one; the rest may lie here as before. */
  private static List<String> preferring(List<String> kinds, String wanted) {
    List<String> other = new ArrayList<>(kinds.subList(1, kinds.size()));
    other.remove(wanted);
    other.add(0, wanted);
    return List.copyOf(other);
  }
}
