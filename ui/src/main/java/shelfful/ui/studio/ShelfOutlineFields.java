package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shelfful.kiln.ShelfOutline;
import shelfful.measure.Length;
import shelfful.studio.Studio;

/** The outline of a shelf: its shape and the sizes that the shape has. */
record ShelfOutlineFields(FieldMaker make) {
  private static final Length SAW_CUT = Length.ofMillimetres(3);
  private static final int USUAL_SIDES = 8;

  /** The shapes, and which sizes each has. */
  private enum Shape {
    FULL_ROUND("diameter"),
    HALF_ROUND("diameter", "sawCut"),
    QUARTER_ROUND("diameter", "sawCut"),
    POLYGON("sides", "acrossFlats"),
    HALF_POLYGON("sides", "acrossFlats", "sawCut"),
    RECTANGLE("width", "depth");

    private final List<String> sizes;

    Shape(String... sizes) {
      this.sizes = List.of(sizes);
    }
  }

  /** Every size that any shape has, kept while the shape is changed. */
  private record Sizes(int sides, Length across, Length depth, Length sawCut) {}

  List<Field> of(Place<ShelfOutline> place, Studio studio) {
    List<Field> fields = new ArrayList<>();
    fields.add(
        make.choice(
            "shelfShape",
            place,
            Arrays.stream(Shape.values()).map(make::choice).toList(),
            outline -> shape(outline).name(),
            (was, is) -> made(Shape.valueOf(is), sizes(was))));
    Shape shape = shape(place.get().apply(studio));
    shape.sizes.forEach(size -> fields.add(size(size, place)));
    return fields;
  }

  private Field size(String component, Place<ShelfOutline> place) {
    if (component.equals("sides")) {
      Place<Integer> sides =
          place.part(
              component,
              outline -> sizes(outline).sides(),
              (outline, is) -> Component.with(outline, component, is));
      return make.count(component, sides, ChamberFields.LEAST_SIDES, ChamberFields.MOST_SIDES);
    }
    Place<Length> length =
        place.part(
            component,
            outline -> length(outline, component),
            (outline, is) -> Component.with(outline, component, is));
    return make.length(
        component, length, component.equals("sawCut") ? Bounds.CLEARANCE : Bounds.SIZE);
  }

  private static Length length(ShelfOutline outline, String component) {
    Sizes sizes = sizes(outline);
    return switch (component) {
      case "sawCut" -> sizes.sawCut();
      case "depth" -> sizes.depth();
      default -> sizes.across();
    };
  }

  private static Shape shape(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound) {
      return Shape.FULL_ROUND;
    }
    if (outline instanceof ShelfOutline.HalfRound) {
      return Shape.HALF_ROUND;
    }
    if (outline instanceof ShelfOutline.QuarterRound) {
      return Shape.QUARTER_ROUND;
    }
    if (outline instanceof ShelfOutline.Polygon) {
      return Shape.POLYGON;
    }
    return outline instanceof ShelfOutline.HalfPolygon ? Shape.HALF_POLYGON : Shape.RECTANGLE;
  }

  private static Sizes sizes(ShelfOutline outline) {
    if (outline instanceof ShelfOutline.FullRound one) {
      return new Sizes(USUAL_SIDES, one.diameter(), one.diameter(), SAW_CUT);
    }
    if (outline instanceof ShelfOutline.HalfRound one) {
      return new Sizes(USUAL_SIDES, one.diameter(), one.diameter(), one.sawCut());
    }
    if (outline instanceof ShelfOutline.QuarterRound one) {
      return new Sizes(USUAL_SIDES, one.diameter(), one.diameter(), one.sawCut());
    }
    if (outline instanceof ShelfOutline.Polygon one) {
      return new Sizes(one.sides(), one.acrossFlats(), one.acrossFlats(), SAW_CUT);
    }
    if (outline instanceof ShelfOutline.HalfPolygon one) {
      return new Sizes(one.sides(), one.acrossFlats(), one.acrossFlats(), one.sawCut());
    }
    ShelfOutline.Rectangle one = (ShelfOutline.Rectangle) outline;
    return new Sizes(USUAL_SIDES, one.width(), one.depth(), SAW_CUT);
  }

  private static ShelfOutline made(Shape shape, Sizes of) {
    return switch (shape) {
      case FULL_ROUND -> new ShelfOutline.FullRound(of.across());
      case HALF_ROUND -> new ShelfOutline.HalfRound(of.across(), of.sawCut());
      case QUARTER_ROUND -> new ShelfOutline.QuarterRound(of.across(), of.sawCut());
      case POLYGON -> new ShelfOutline.Polygon(of.sides(), of.across());
      case HALF_POLYGON -> new ShelfOutline.HalfPolygon(of.sides(), of.across(), of.sawCut());
      case RECTANGLE -> new ShelfOutline.Rectangle(of.across(), of.depth());
    };
  }
}
