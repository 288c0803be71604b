package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import shelfful.measure.Cone;
import shelfful.measure.TextReading;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;
import shelfful.week.Program;

/** A way of firing a kiln. */
final class ProgramFormat {
  private ProgramFormat() {}

  static Optional<Program> read(FieldReader fields) {
    String id = fields.id("id");
    FiringKind kind = fields.choice("kind", FiringKind.class);
    Cone cone = fields.required("cone", FileValue::cone, new Cone("6"));
    int tolerance = fields.whole("coneTolerance", 0, Cone.NUMBERS.size(), 0);
    Atmosphere air =
        fields.optionalChoice("atmosphere", Atmosphere.class).orElse(Atmosphere.OXIDATION);
    Duration preheating = fields.optional("preheating", TimeText::duration).orElse(Duration.ZERO);
    Duration up = time(fields, "up");
    Duration down = time(fields, "down");
    Duration loading = time(fields, "loading");
    Duration unpacking = time(fields, "unpacking");
    OptionalDouble duty = number(fields, "duty");
    OptionalDouble measured = number(fields, "measuredKilowattHours");
    return fields.make(
        () ->
            new Program(
                id,
                kind,
                cone,
                tolerance,
                air,
                preheating,
                up,
                down,
                loading,
                unpacking,
                duty,
                measured));
  }

  private static Duration time(FieldReader fields, String field) {
    return fields.required(field, TimeText::duration, Duration.ofHours(1));
  }

  static OptionalDouble number(FieldReader fields, String field) {
    Optional<Double> found = fields.optional(field, ProgramFormat::number);
    return found.isPresent() ? OptionalDouble.of(found.get()) : OptionalDouble.empty();
  }

  static TextReading<Double> number(JsonNode node) {
    return FileNumber.decimal(node)
        .then(value -> new TextReading.Understood<>(value.doubleValue()));
  }

  static void write(Program program, FieldWriter fields) {
    fields
        .text("id", program.id())
        .word("kind", program.kind())
        .cone("cone", Optional.of(program.cone()))
        .whole("coneTolerance", program.coneTolerance())
        .word("atmosphere", program.atmosphere())
        .text("preheating", TimeText.duration(program.preheating()))
        .text("up", TimeText.duration(program.up()))
        .text("down", TimeText.duration(program.down()))
        .text("loading", TimeText.duration(program.loading()))
        .text("unpacking", TimeText.duration(program.unpacking()))
        .number("duty", program.duty())
        .number("measuredKilowattHours", program.measured());
  }
}
