package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import shelfful.measure.TextReading;
import shelfful.ware.Shrinkage;

/** The linear shrinkage of a body in percent of each step; a step left out does not shrink. */
final class ShrinkageFormat {
  private static final double TOO_MUCH = 30;

  private ShrinkageFormat() {}

  static Optional<Shrinkage> read(FieldReader fields) {
    double drying = fields.optional("drying", ShrinkageFormat::percent).orElse(0.0);
    double bisque = fields.optional("bisque", ShrinkageFormat::percent).orElse(0.0);
    double glaze = fields.optional("glaze", ShrinkageFormat::percent).orElse(0.0);
    return fields.make(() -> new Shrinkage(drying, bisque, glaze));
  }

  private static TextReading<Double> percent(JsonNode node) {
    return FileNumber.decimal(node)
        .then(
            value ->
                value.signum() < 0 || value.doubleValue() >= TOO_MUCH
                    ? FileNumber.refused(
                        node,
                        "is out of range.",
                        "Shrinkage is from 0 up to 30 percent, as (before - after) / before.")
                    : new TextReading.Understood<>(value.doubleValue()));
  }

  static void write(Shrinkage shrinkage, FieldWriter fields) {
    fields
        .percent("drying", shrinkage.drying())
        .percent("bisque", shrinkage.bisque())
        .percent("glaze", shrinkage.glaze());
  }
}
