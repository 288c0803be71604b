package shelfful.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.StandingPost;
import shelfful.ware.Batch;
import shelfful.ware.Piece;
import shelfful.week.FiringTimes;
import shelfful.week.Hold;
import shelfful.week.KilnWork;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.Program;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/** A firing of a week plan: its studio and batches are those of the plan, written once. */
final class PlannedFiringFormat {
  private static final LocalDateTime STAND_IN = LocalDate.EPOCH.atStartOfDay();

  private final WeekRequest request;

  PlannedFiringFormat(WeekRequest request) {
    this.request = request;
  }

  Optional<PlannedFiring> read(FieldReader fields) {
    String id = fields.id("id");
    String kiln = fields.id("kiln");
    String programId = fields.id("program");
    LocalDateTime loads = fields.required("loads", TimeText::moment, STAND_IN);
    LocalDateTime unpacks = fields.required("unpacks", TimeText::moment, STAND_IN);
    Hold hold = fields.optionalChoice("hold", Hold.class).orElse(Hold.FREE);
    Optional<Program> program =
        request.kiln(kiln).flatMap((KilnWork work) -> work.program(programId));
    if (program.isEmpty() && fields.isStillGood()) {
      fields.fault(
          "program",
          "The kiln " + Shown.quoted(kiln) + " has no program " + Shown.quoted(programId) + ".",
          "Name a program of that kiln.");
    }
    fields.optional("unpacked", TimeText::moment);
    List<Portion> portions = fields.objects("portions", PlannedFiringFormat::portion);
    if (program.isEmpty() || !fields.isStillGood()) {
      return Optional.empty();
    }
    Optional<Load> load =
        portions.isEmpty()
            ? Optional.empty()
            : fields.object(
                "load", inner -> load(inner, program.get(), new Asked(kiln, loads, portions)));
    return fields.make(
        () ->
            new PlannedFiring(
                id,
                kiln,
                programId,
                FiringTimes.of(program.get(), loads, unpacks),
                portions,
                load,
                hold));
  }

  private record Asked(String kiln, LocalDateTime loads, List<Portion> portions) {}

  private static Optional<Portion> portion(FieldReader fields) {
    return fields.make(PortionFormat.read(fields));
  }

  private Optional<Load> load(FieldReader fields, Program program, Asked asked) {
    String columnPlan = fields.id("columnPlan");
    long seed = fields.wholeLong("seed", Long.MIN_VALUE);
    long steps = fields.wholeLong("steps", 0);
    Optional<List<Batch>> batches = batches(fields, program, asked.portions());
    if (batches.isEmpty()) {
      return Optional.empty();
    }
    LoadRequest loadRequest =
        new LoadRequest(
            request.studio(),
            batches.get(),
            program.in(asked.kiln()),
            Optional.empty(),
            Optional.of(asked.loads().toLocalDate()),
            seed,
            steps);
    Map<String, Piece> pieces = new HashMap<>();
    loadRequest.pieces().forEach(piece -> pieces.put(piece.id(), piece));
    KeptMarks marks = new KeptMarks();
    List<Layer> layers = fields.objects("layers", layer -> LayerFormat.read(layer, pieces, marks));
    List<StandingPost> posts = fields.objects("posts", StandingPostFormat::read);
    return fields.make(() -> new Load(loadRequest, columnPlan, layers, posts, List.of()));
  }

  private Optional<List<Batch>> batches(
      FieldReader fields, Program program, List<Portion> portions) {
    List<Batch> batches = new ArrayList<>();
    for (Portion portion : portions) {
      Optional<WareLine> line = request.line(portion.batchId());
      if (line.isEmpty()) {
        fields.fault(
            "",
            "The week has no batch " + Shown.quoted(portion.batchId()) + ".",
            "Name batches of the week.");
        return Optional.empty();
      }
      batches.add(line.get().going(program.kind(), portion.size()));
    }
    return Optional.of(batches);
  }

  static void write(PlannedFiring firing, FieldWriter fields) {
    fields
        .text("id", firing.id())
        .text("kiln", firing.kilnId())
        .text("program", firing.programId())
        .text("loads", TimeText.moment(firing.times().loads()))
        .text("unpacks", TimeText.moment(firing.times().unpacks()))
        .text("unpacked", TimeText.moment(firing.times().unpacked()))
        .word("hold", firing.hold())
        .objects("portions", firing.portions(), PortionFormat::write);
    firing.load().ifPresent(load -> fields.object("load", load, PlannedFiringFormat::write));
  }

  private static void write(Load load, FieldWriter fields) {
    Map<String, Piece> pieces = new HashMap<>();
    load.request().pieces().forEach(piece -> pieces.put(piece.id(), piece));
    KeptMarks marks = new KeptMarks();
    fields
        .text("columnPlan", load.columnPlanId())
        .whole("seed", load.request().seed())
        .whole("steps", load.request().steps())
        .objects(
            "layers",
            load.layers(),
            (layer, inner) -> LayerFormat.write(layer, inner, pieces, marks))
        .objects("posts", load.posts(), StandingPostFormat::write);
  }
}
