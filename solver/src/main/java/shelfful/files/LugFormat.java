package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.ware.Band;
import shelfful.ware.Lug;
import shelfful.ware.Outline;

/**
 * A lug. How far it goes is given as {@code reach} from the piece's axis, or as {@code sticksOut}
 * beyond the body, which is what a ruler measures; it is written as reach.
 */
final class LugFormat {
  private LugFormat() {}

  static Optional<Lug> read(FieldReader fields, List<Band> bands, Length height) {
    String name = fields.name("name");
    Angle direction = fields.required("direction", AngleFormat::read, Angle.ZERO);
    Length width = fields.length("width", LengthRange.SIZE);
    Length from = fields.length("from", LengthRange.FROM_ZERO);
    Length to = fields.length("to", LengthRange.SIZE);
    Length reach = reach(fields, new Heights(from, to), direction, bands);
    if (to.isLongerThan(height) && !height.equals(LengthRange.SIZE.most())) {
      fields.fault(
          "to",
          "The lug ends at "
              + FileNumber.written(to)
              + " mm, above the form's "
              + FileNumber.written(height)
              + " mm.",
          "Lower it or raise the form's height.");
    }
    return fields.make(() -> new Lug(name, direction, reach, width, from, to));
  }

  private static Length reach(
      FieldReader fields, Heights heights, Angle direction, List<Band> bands) {
    if (!fields.has("sticksOut")) {
      return fields.length("reach", LengthRange.SIZE);
    }
    if (fields.has("reach")) {
      fields.fault("reach", "Both reach and sticksOut are given.", "Keep one of the two.");
    }
    Length sticksOut = fields.length("sticksOut", LengthRange.SIZE);
    double body =
        bands.stream()
            .filter(heights::meet)
            .mapToDouble(band -> halfAcross(band.outline(), direction))
            .max()
            .orElse(0);
    return Length.ofMillimetres(Math.ceil(body * 1000 - 1e-6) / 1000).plus(sticksOut);
  }

  /** From the axis to the edge in a direction; for an oval by its equation in polar form. */
  private static double halfAcross(Outline outline, Angle direction) {
    double a = outline.width().millimetres() / 2;
    double b = outline.depth().millimetres() / 2;
    double alongX = Math.cos(direction.radians()) / a;
    double alongY = Math.sin(direction.radians()) / b;
    return 1 / Math.hypot(alongX, alongY);
  }

  static void write(Lug lug, FieldWriter fields) {
    fields
        .text("name", lug.name())
        .angle("direction", lug.direction())
        .length("reach", lug.reach())
        .length("width", lug.width())
        .length("from", lug.from())
        .length("to", lug.to());
  }

  private record Heights(Length from, Length to) {
    boolean meet(Band band) {
      return band.to().isLongerThan(from) && to.isLongerThan(band.from());
    }
  }
}
