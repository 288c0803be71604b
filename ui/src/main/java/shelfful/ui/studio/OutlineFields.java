package shelfful.ui.studio;

import java.util.List;
import shelfful.studio.Studio;
import shelfful.ware.Outline;

/** An outline: round or oval, and its sizes. */
record OutlineFields(FieldMaker make) {
  private static final String ROUND = "ROUND";
  private static final String OVAL = "OVAL";

  List<Field> of(String prefix, Place<Outline> place, Studio studio) {
    Field shape =
        make.choice(
            prefix + "Shape",
            place,
            List.of(
                new Field.Choice(ROUND, make.words().of("choice.round")),
                new Field.Choice(OVAL, make.words().of("choice.oval"))),
            outline -> outline instanceof Outline.Round ? ROUND : OVAL,
            OutlineFields::as);
    if (place.get().apply(studio) instanceof Outline.Round) {
      return List.of(
          shape,
          make.length(
              prefix + "Diameter",
              place.part("diameter", Outline::width, (was, size) -> new Outline.Round(size)),
              Bounds.SIZE));
    }
    return List.of(
        shape,
        make.length(
            prefix + "Width",
            place.part("width", Outline::width, (was, is) -> new Outline.Oval(is, was.depth())),
            Bounds.SIZE),
        make.length(
            prefix + "Depth",
            place.part("depth", Outline::depth, (was, is) -> new Outline.Oval(was.width(), is)),
            Bounds.SIZE));
  }

  private static Outline as(Outline outline, String shape) {
    return shape.equals(ROUND)
        ? new Outline.Round(outline.width())
        : new Outline.Oval(outline.width(), outline.depth());
  }
}
