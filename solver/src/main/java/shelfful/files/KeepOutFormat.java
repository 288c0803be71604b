package shelfful.files;

import java.util.Optional;
import shelfful.kiln.KeepOut;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** A part of the chamber to stay clear of. */
final class KeepOutFormat {
  private KeepOutFormat() {}

  static Optional<KeepOut> read(FieldReader fields) {
    String name = fields.name("name");
    KeepOut.Kind kind = fields.choice("kind", KeepOut.Kind.class);
    Point from = fields.point("from");
    Point to = fields.point("to");
    Length across = fields.length("across", LengthRange.SIZE);
    Length bottom = fields.length("bottom", LengthRange.FROM_ZERO);
    Length top = fields.length("top", LengthRange.SIZE);
    return fields.make(() -> new KeepOut(name, kind, from, to, across, bottom, top));
  }

  static void write(KeepOut keepOut, FieldWriter fields) {
    fields
        .text("name", keepOut.name())
        .word("kind", keepOut.kind())
        .point("from", keepOut.from())
        .point("to", keepOut.to())
        .length("across", keepOut.across())
        .length("bottom", keepOut.bottom())
        .length("top", keepOut.top());
  }
}
