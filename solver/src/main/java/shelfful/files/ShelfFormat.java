package shelfful.files;

import java.util.Optional;
import java.util.function.Supplier;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Mass;

/** A kind of shelf and how many there are; its outline is told by {@code shape}. */
final class ShelfFormat {
  private static final int MOST = 1000;

  private ShelfFormat() {}

  static Optional<Shelf> read(FieldReader fields) {
    String id = fields.id("id");
    String name = fields.name("name");
    Supplier<ShelfOutline> outline = outline(fields);
    Length thickness = fields.length("thickness", LengthRange.SIZE);
    Optional<Mass> massLimit = fields.optional("massLimit", FileValue::mass);
    Optional<Cone> hottest = fields.optionalCone("hottest");
    int count = fields.whole("count", 0, MOST);
    return fields.make(
        () -> new Shelf(id, name, outline.get(), thickness, massLimit, hottest, count));
  }

  private static Supplier<ShelfOutline> outline(FieldReader fields) {
    return switch (fields.choice("shape", Shape.class)) {
      case ROUND -> {
        Length diameter = size(fields, "diameter");
        yield () -> new ShelfOutline.FullRound(diameter);
      }
      case HALF_ROUND -> {
        Length diameter = size(fields, "diameter");
        Length sawCut = sawCut(fields);
        yield () -> new ShelfOutline.HalfRound(diameter, sawCut);
      }
      case QUARTER_ROUND -> {
        Length diameter = size(fields, "diameter");
        Length sawCut = sawCut(fields);
        yield () -> new ShelfOutline.QuarterRound(diameter, sawCut);
      }
      case POLYGON -> {
        int sides = ChamberFormat.sides(fields);
        Length acrossFlats = size(fields, "acrossFlats");
        yield () -> new ShelfOutline.Polygon(sides, acrossFlats);
      }
      case HALF_POLYGON -> {
        int sides = ChamberFormat.sides(fields);
        Length acrossFlats = size(fields, "acrossFlats");
        Length sawCut = sawCut(fields);
        yield () -> new ShelfOutline.HalfPolygon(sides, acrossFlats, sawCut);
      }
      case RECTANGLE -> {
        Length width = size(fields, "width");
        Length depth = size(fields, "depth");
        yield () -> new ShelfOutline.Rectangle(width, depth);
      }
    };
  }

  private static Length size(FieldReader fields, String field) {
    return fields.length(field, LengthRange.SIZE);
  }

  private static Length sawCut(FieldReader fields) {
    return fields.length("sawCut", LengthRange.CLEARANCE);
  }

  static void write(Shelf shelf, FieldWriter fields) {
    fields.text("id", shelf.id()).text("name", shelf.name());
    writeOutline(shelf.outline(), fields);
    fields.length("thickness", shelf.thickness());
    shelf.massLimit().ifPresent(limit -> fields.mass("massLimit", limit));
    fields.cone("hottest", shelf.hottest()).whole("count", shelf.count());
  }

  private static void writeOutline(ShelfOutline outline, FieldWriter fields) {
    if (outline instanceof ShelfOutline.FullRound round) {
      fields.word("shape", Shape.ROUND).length("diameter", round.diameter());
    } else if (outline instanceof ShelfOutline.HalfRound half) {
      fields.word("shape", Shape.HALF_ROUND).length("diameter", half.diameter());
      fields.length("sawCut", half.sawCut());
    } else if (outline instanceof ShelfOutline.QuarterRound quarter) {
      fields.word("shape", Shape.QUARTER_ROUND).length("diameter", quarter.diameter());
      fields.length("sawCut", quarter.sawCut());
    } else if (outline instanceof ShelfOutline.Polygon polygon) {
      fields.word("shape", Shape.POLYGON).whole("sides", polygon.sides());
      fields.length("acrossFlats", polygon.acrossFlats());
    } else if (outline instanceof ShelfOutline.HalfPolygon half) {
      fields.word("shape", Shape.HALF_POLYGON).whole("sides", half.sides());
      fields.length("acrossFlats", half.acrossFlats()).length("sawCut", half.sawCut());
    } else if (outline instanceof ShelfOutline.Rectangle rectangle) {
      fields.word("shape", Shape.RECTANGLE).length("width", rectangle.width());
      fields.length("depth", rectangle.depth());
    }
  }

  private enum Shape {
    ROUND,
    HALF_ROUND,
    QUARTER_ROUND,
    POLYGON,
    HALF_POLYGON,
    RECTANGLE
  }
}
