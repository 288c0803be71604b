package shelfful.files;

import java.util.Optional;
import java.util.function.Supplier;
import shelfful.kiln.Chamber;
import shelfful.kiln.FloorPlan;
import shelfful.measure.Length;

/** The inside of a kiln; its floor plan is told by {@code shape}. */
final class ChamberFormat {
  private static final int LEAST_SIDES = 5;
  private static final int MOST_SIDES = 24;

  private ChamberFormat() {}

  static Optional<Chamber> read(FieldReader fields) {
    Supplier<FloorPlan> floorPlan = floorPlan(fields);
    Length height = fields.length("height", LengthRange.SIZE);
    return fields.make(() -> new Chamber(floorPlan.get(), height));
  }

  static int sides(FieldReader fields) {
    return fields.whole("sides", LEAST_SIDES, MOST_SIDES);
  }

  private static Supplier<FloorPlan> floorPlan(FieldReader fields) {
    return switch (fields.choice("shape", Shape.class)) {
      case ROUND -> {
        Length diameter = fields.length("diameter", LengthRange.SIZE);
        yield () -> new FloorPlan.Round(diameter);
      }
      case POLYGON -> {
        int sides = sides(fields);
        Length acrossFlats = fields.length("acrossFlats", LengthRange.SIZE);
        yield () -> new FloorPlan.Polygon(sides, acrossFlats);
      }
      case OVAL -> {
        Length width = fields.length("width", LengthRange.SIZE);
        Length depth = fields.length("depth", LengthRange.SIZE);
        yield () -> new FloorPlan.Oval(width, depth);
      }
      case RECTANGLE -> {
        Length width = fields.length("width", LengthRange.SIZE);
        Length depth = fields.length("depth", LengthRange.SIZE);
        yield () -> new FloorPlan.Rectangle(width, depth);
      }
    };
  }

  static void write(Chamber chamber, FieldWriter fields) {
    FloorPlan plan = chamber.floorPlan();
    if (plan instanceof FloorPlan.Round round) {
      fields.word("shape", Shape.ROUND).length("diameter", round.diameter());
    } else if (plan instanceof FloorPlan.Polygon polygon) {
      fields.word("shape", Shape.POLYGON).whole("sides", polygon.sides());
      fields.length("acrossFlats", polygon.acrossFlats());
    } else {
      fields.word("shape", plan instanceof FloorPlan.Oval ? Shape.OVAL : Shape.RECTANGLE);
      fields.length("width", plan.width()).length("depth", plan.depth());
    }
    fields.length("height", chamber.height());
  }

  private enum Shape {
    ROUND,
    POLYGON,
    OVAL,
    RECTANGLE
  }
}
