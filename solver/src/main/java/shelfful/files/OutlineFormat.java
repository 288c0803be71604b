package shelfful.files;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.ware.Outline;

/** An outline: {@code diameter} for a circle, {@code width} and {@code depth} for an oval. */
final class OutlineFormat {
  private OutlineFormat() {}

  static Optional<Outline> read(FieldReader fields) {
    return fields.make(maker(fields)::outline);
  }

  /** Reads the fields of an outline out of an object that has others besides. */
  static Maker maker(FieldReader fields) {
    if (fields.has("diameter")) {
      Length diameter = fields.length("diameter", LengthRange.SIZE);
      return () -> new Outline.Round(diameter);
    }
    if (!fields.has("width") && !fields.has("depth")) {
      fields.fault(
          "diameter",
          "The outline has no size.",
          "Give a diameter, or width and depth for an oval.");
      return () -> new Outline.Round(LengthRange.SIZE.most());
    }
    Length width = fields.length("width", LengthRange.SIZE);
    Length depth = fields.length("depth", LengthRange.SIZE);
    return () -> new Outline.Oval(width, depth);
  }

  static void write(Outline outline, FieldWriter fields) {
    if (outline instanceof Outline.Round round) {
      fields.length("diameter", round.diameter());
    } else {
      fields.length("width", outline.width()).length("depth", outline.depth());
    }
  }

  /** Makes the outline once it is known that its sizes are good. */
  interface Maker {
    Outline outline();
  }
}
