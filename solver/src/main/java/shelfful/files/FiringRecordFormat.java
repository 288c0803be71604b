package shelfful.files;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.record.FiredPiece;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.Ring;
import shelfful.record.WitnessCone;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;
import shelfful.ware.Zone;

/** A firing that was loaded, with its pieces. It stands alone: no studio is needed to read it. */
final class FiringRecordFormat {
  private static final int MOST_MINUTES = 60 * 24 * 60;
  private static final int MOST_PIECES = 1_000_000;

  private FiringRecordFormat() {}

  static Optional<FiringRecord> read(FieldReader fields) {
    String id = fields.id("id");
    LocalDate day = fields.required("day", FileValue::day, LocalDate.EPOCH);
    Optional<Firing> firing = fields.object("firing", FiringRecordFormat::firing);
    String mark = fields.id("plan");
    int waited = fields.whole("waited", 0, MOST_PIECES);
    Optional<Integer> limit =
        fields.optional("limit", node -> FileValue.whole(node, 0, MOST_PIECES));
    List<FiredPiece> pieces = fields.objects("pieces", FiringRecordFormat::piece);
    noteTwice(pieces, fields);
    Optional<FiringCourse> course = fields.optionalObject("course", FiringRecordFormat::course);
    return fields.make(
        () ->
            new FiringRecord(
                id,
                day,
                firing.orElseThrow(),
                mark,
                waited,
                limit,
                pieces,
                course.orElse(FiringCourse.UNKNOWN)));
  }

  private static void noteTwice(List<FiredPiece> pieces, FieldReader fields) {
    Map<String, String> first = new HashMap<>();
    for (FiredPiece piece : pieces) {
      String at = fields.madeAt().pathOf(piece);
      String before = first.putIfAbsent(piece.pieceId(), at);
      if (before != null) {
        fields
            .problems()
            .add(
                at,
                "piece",
                "The piece " + piece.pieceId() + " is named twice: it stands at " + before + ".",
                "Remove one of the two.");
      }
    }
  }

  private static Optional<Firing> firing(FieldReader fields) {
    String kiln = fields.id("kiln");
    FiringKind kind = fields.choice("kind", FiringKind.class);
    Cone cone = fields.required("cone", FileValue::cone, new Cone("6"));
    int tolerance = fields.whole("coneTolerance", 0, Cone.NUMBERS.size());
    Atmosphere atmosphere = fields.choice("atmosphere", Atmosphere.class);
    return fields.make(() -> new Firing(kiln, kind, cone, tolerance, atmosphere));
  }

  private static Optional<FiredPiece> piece(FieldReader fields) {
    String id = fields.name("piece");
    String form = fields.id("form");
    Optional<String> glaze = fields.optionalId("glaze");
    String layer = fields.name("layer");
    Zone zone = fields.choice("zone", Zone.class);
    Ring ring = fields.choice("ring", Ring.class);
    return fields.make(() -> new FiredPiece(id, form, glaze, layer, zone, ring));
  }

  private static Optional<FiringCourse> course(FieldReader fields) {
    Optional<String> program =
        fields.optional("program", node -> FieldReader.text(node).then(FileName::name));
    List<WitnessCone> cones = fields.optionalObjects("cones", FiringRecordFormat::cone);
    Optional<Integer> up = minutes(fields, "minutesUp");
    Optional<Integer> down = minutes(fields, "minutesDown");
    Optional<Long> start = fields.optional("meterStart", FileNumber::thousandths);
    Optional<Long> end = fields.optional("meterEnd", FileNumber::thousandths);
    return fields.make(() -> new FiringCourse(program, cones, up, down, start, end));
  }

  private static Optional<Integer> minutes(FieldReader fields, String field) {
    return fields.optional(field, node -> FileValue.whole(node, 0, MOST_MINUTES));
  }

  private static Optional<WitnessCone> cone(FieldReader fields) {
    String place = fields.name("place");
    Cone reached = fields.required("reached", FileValue::cone, new Cone("6"));
    return fields.make(() -> new WitnessCone(place, reached));
  }

  static void write(FiringRecord record, FieldWriter fields) {
    fields
        .text("id", record.id())
        .text("day", record.day().toString())
        .object("firing", record.firing(), FiringFormat::write)
        .text("plan", record.planMark())
        .whole("waited", record.waited());
    record.limit().ifPresent(limit -> fields.whole("limit", limit));
    if (!record.course().equals(FiringCourse.UNKNOWN)) {
      fields.object("course", record.course(), FiringRecordFormat::writeCourse);
    }
    fields.objects("pieces", record.pieces(), FiringRecordFormat::writePiece);
  }

  private static void writeCourse(FiringCourse course, FieldWriter fields) {
    fields.text("program", course.program());
    if (!course.cones().isEmpty()) {
      fields.objects(
          "cones",
          course.cones(),
          (cone, inner) ->
              inner.text("place", cone.place()).cone("reached", Optional.of(cone.reached())));
    }
    course.minutesUp().ifPresent(minutes -> fields.whole("minutesUp", minutes));
    course.minutesDown().ifPresent(minutes -> fields.whole("minutesDown", minutes));
    course.meterStart().ifPresent(reading -> fields.thousandths("meterStart", reading));
    course.meterEnd().ifPresent(reading -> fields.thousandths("meterEnd", reading));
  }

  private static void writePiece(FiredPiece piece, FieldWriter fields) {
    fields
        .text("piece", piece.pieceId())
        .text("form", piece.formId())
        .text("glaze", piece.glazeId())
        .text("layer", piece.layerId())
        .word("zone", piece.zone())
        .word("ring", piece.ring());
  }
}
