package shelfful.files;

import java.util.Optional;
import shelfful.load.LeftOut;

/** A piece that waits, in a plan. */
final class LeftOutFormat {
  private LeftOutFormat() {}

  static Optional<LeftOut> read(FieldReader fields) {
    String piece = fields.name("piece");
    LeftOut.Reason reason = fields.choice("reason", LeftOut.Reason.class);
    String sentence = note(fields, "sentence");
    String mend = note(fields, "mend");
    return fields.make(() -> new LeftOut(piece, reason, sentence, mend));
  }

  private static String note(FieldReader fields, String field) {
    return fields.required(field, node -> FieldReader.text(node).then(FileName::note), "");
  }

  static void write(LeftOut leftOut, FieldWriter fields) {
    fields
        .text("piece", leftOut.pieceId())
        .word("reason", leftOut.reason())
        .text("sentence", leftOut.sentence())
        .text("mend", leftOut.mend());
  }
}
