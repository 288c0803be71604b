package shelfful.files;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.ware.Band;

/** A band of a body: its outline and the heights over the foot between which it holds. */
final class BandFormat {
  private BandFormat() {}

  static Optional<Band> read(FieldReader fields) {
    Length from = fields.length("from", LengthRange.FROM_ZERO);
    Length to = fields.length("to", LengthRange.SIZE);
    OutlineFormat.Maker outline = OutlineFormat.maker(fields);
    return fields.make(() -> new Band(outline.outline(), from, to));
  }

  static void write(Band band, FieldWriter fields) {
    fields.length("from", band.from()).length("to", band.to());
    OutlineFormat.write(band.outline(), fields);
  }
}
