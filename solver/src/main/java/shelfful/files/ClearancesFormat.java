package shelfful.files;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.studio.Clearances;

/** The distances kept; each one left out is common practice. */
final class ClearancesFormat {
  private static final LengthRange LAYER = LengthRange.ofMillimetres(0, 1000);

  private ClearancesFormat() {}

  static Optional<Clearances> read(FieldReader fields) {
    Clearances usual = Clearances.COMMON_PRACTICE;
    Clearances read =
        new Clearances(
            clearance(fields, "glazedToGlazed", usual.glazedToGlazed()),
            clearance(fields, "bisqueToBisque", usual.bisqueToBisque()),
            clearance(fields, "wareToPost", usual.wareToPost()),
            clearance(fields, "wareToWall", usual.wareToWall()),
            clearance(fields, "wareToKeepOut", usual.wareToKeepOut()),
            clearance(fields, "footToShelfEdge", usual.footToShelfEdge()),
            clearance(fields, "headroom", usual.headroom()),
            clearance(fields, "underLid", usual.underLid()),
            clearance(fields, "offFloor", usual.offFloor()),
            fields.length("leastShelfToShelf", LAYER, usual.leastShelfToShelf()));
    return fields.make(() -> read);
  }

  private static Length clearance(FieldReader fields, String field, Length usual) {
    return fields.length(field, LengthRange.CLEARANCE, usual);
  }

  static void write(Clearances clearances, FieldWriter fields) {
    fields
        .length("glazedToGlazed", clearances.glazedToGlazed())
        .length("bisqueToBisque", clearances.bisqueToBisque())
        .length("wareToPost", clearances.wareToPost())
        .length("wareToWall", clearances.wareToWall())
        .length("wareToKeepOut", clearances.wareToKeepOut())
        .length("footToShelfEdge", clearances.footToShelfEdge())
        .length("headroom", clearances.headroom())
        .length("underLid", clearances.underLid())
        .length("offFloor", clearances.offFloor())
        .length("leastShelfToShelf", clearances.leastShelfToShelf());
  }
}
