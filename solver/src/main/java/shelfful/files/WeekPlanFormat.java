package shelfful.files;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import shelfful.ware.FiringKind;
import shelfful.week.Late;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.Waiting;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** A week plan. It stands alone: what was asked is in it. */
final class WeekPlanFormat {
  private static final int MOST = 100_000;

  private WeekPlanFormat() {}

  static Optional<WeekPlan> read(FieldReader fields) {
    Optional<WeekRequest> request = WeekFormat.read(fields);
    if (request.isEmpty()) {
      return Optional.empty();
    }
    PlannedFiringFormat format = new PlannedFiringFormat(request.get());
    List<PlannedFiring> firings = fields.objects("firings", format::read);
    List<Waiting> waiting = fields.objects("waiting", WeekPlanFormat::waiting);
    List<Late> late = fields.objects("late", WeekPlanFormat::late);
    List<PlannedFiring> held = PlannedFiring.held(firings);
    return fields.make(() -> new WeekPlan(request.get().holding(held), firings, waiting, late));
  }

  private static Optional<Waiting> waiting(FieldReader fields) {
    Supplier<Portion> portion = PortionFormat.read(fields);
    FiringKind kind = fields.choice("missing", FiringKind.class);
    Waiting.Reason reason = fields.choice("reason", Waiting.Reason.class);
    String sentence = fields.required("sentence", FieldReader::text, "");
    String mend = fields.required("mend", FieldReader::text, "");
    return fields.make(() -> new Waiting(portion.get(), kind, reason, sentence, mend));
  }

  private static Optional<Late> late(FieldReader fields) {
    String batch = fields.id("batch");
    int pieces = fields.whole("pieces", 1, MOST);
    int days = fields.whole("days", 1, MOST);
    return fields.make(() -> new Late(batch, pieces, days));
  }

  static void write(WeekPlan plan, FieldWriter fields) {
    WeekFormat.writeShort(plan.request(), fields);
    fields
        .objects("firings", plan.firings(), PlannedFiringFormat::write)
        .objects("waiting", plan.waiting(), WeekPlanFormat::write)
        .objects(
            "late",
            plan.late(),
            (late, inner) ->
                inner
                    .text("batch", late.batchId())
                    .whole("pieces", late.pieces())
                    .whole("days", late.days()));
    WeekFormat.writeLong(plan.request(), fields);
  }

  private static void write(Waiting waiting, FieldWriter fields) {
    PortionFormat.write(waiting.portion(), fields);
    fields
        .word("missing", waiting.kind())
        .word("reason", waiting.reason())
        .text("sentence", waiting.sentence())
        .text("mend", waiting.mend());
  }
}
