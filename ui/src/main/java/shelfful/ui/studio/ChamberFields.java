package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shelfful.kiln.Chamber;
import shelfful.kiln.FloorPlan;
import shelfful.measure.Length;
import shelfful.studio.Studio;

/** The inside of a kiln: its shape from above and the sizes that the shape has. */
record ChamberFields(FieldMaker make) {
  static final int LEAST_SIDES = 5;
  static final int MOST_SIDES = 24;
  private static final int USUAL_SIDES = 10;

  private enum Shape {
    ROUND,
    POLYGON,
    OVAL,
    RECTANGLE
  }

  List<Field> of(Place<Chamber> chamber, Studio studio) {
    Place<FloorPlan> plan =
        chamber.part("", Chamber::floorPlan, (one, is) -> Component.with(one, "floorPlan", is));
    List<Field> fields = new ArrayList<>();
    fields.add(
        make.choice(
            "chamberShape",
            plan,
            Arrays.stream(Shape.values()).map(make::choice).toList(),
            now -> shape(now).name(),
            (was, is) -> made(Shape.valueOf(is), was)));
    switch (shape(plan.get().apply(studio))) {
      case ROUND -> fields.add(size("diameter", plan));
      case POLYGON -> {
        Place<Integer> sides =
            plan.part("sides", ChamberFields::sides, (one, is) -> Component.with(one, "sides", is));
        fields.add(make.count("sides", sides, LEAST_SIDES, MOST_SIDES));
        fields.add(size("acrossFlats", plan));
      }
      default -> {
        fields.add(size("width", plan));
        fields.add(size("depth", plan));
      }
    }
    fields.add(make.length("chamberHeight", chamber.part("height", Chamber::height), Bounds.SIZE));
    return fields;
  }

  private Field size(String component, Place<FloorPlan> plan) {
    Place<Length> length =
        plan.part(
            component,
            component.equals("depth") ? FloorPlan::depth : FloorPlan::width,
            (one, is) -> Component.with(one, component, is));
    return make.length(component, length, Bounds.SIZE);
  }

  private static int sides(FloorPlan plan) {
    return plan instanceof FloorPlan.Polygon polygon ? polygon.sides() : USUAL_SIDES;
  }

  private static Shape shape(FloorPlan plan) {
    if (plan instanceof FloorPlan.Round) {
      return Shape.ROUND;
    }
    if (plan instanceof FloorPlan.Polygon) {
      return Shape.POLYGON;
    }
    return plan instanceof FloorPlan.Oval ? Shape.OVAL : Shape.RECTANGLE;
  }

  private static FloorPlan made(Shape shape, FloorPlan was) {
    return switch (shape) {
      case ROUND -> new FloorPlan.Round(was.width());
      case POLYGON -> new FloorPlan.Polygon(sides(was), was.width());
      case OVAL -> new FloorPlan.Oval(was.width(), was.depth());
      case RECTANGLE -> new FloorPlan.Rectangle(was.width(), was.depth());
    };
  }
}
