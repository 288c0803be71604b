package shelfful.files;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.ware.Lid;

/** The lid of a form. */
final class LidFormat {
  private LidFormat() {}

  static Optional<Lid> read(FieldReader fields) {
    OutlineFormat.Maker outline = OutlineFormat.maker(fields);
    Length height = fields.length("height", LengthRange.SIZE);
    Length rise = fields.length("rise", LengthRange.SIZE);
    Mass mass = fields.mass("mass");
    return fields.make(() -> new Lid(outline.outline(), height, rise, mass));
  }

  static void write(Lid lid, FieldWriter fields) {
    OutlineFormat.write(lid.outline(), fields);
    fields.length("height", lid.height()).length("rise", lid.rise()).mass("mass", lid.mass());
  }
}
