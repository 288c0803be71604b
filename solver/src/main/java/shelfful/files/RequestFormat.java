package shelfful.files;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import shelfful.load.Firing;
import shelfful.load.LoadRequest;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/**
 * What was asked for, as fields of a plan: it is written apart, the short part before and the long
 * part after.
 */
final class RequestFormat {
  private RequestFormat() {}

  static Optional<LoadRequest> read(FieldReader fields) {
    Optional<Studio> studio = fields.object("studio", StudioFormat::read);
    Optional<String> asked = fields.optionalId("columnPlanAsked");
    Optional<LocalDate> day = fields.optional("day", FileValue::day);
    long seed = fields.wholeLong("seed", Long.MIN_VALUE);
    long steps = fields.wholeLong("steps", 0);
    // Without a studio no name in the rest can be checked.
    if (studio.isEmpty()) {
      return Optional.empty();
    }
    Optional<Firing> firing =
        fields.object("firing", inner -> FiringFormat.read(inner, studio.get()));
    List<Batch> batches = batches(fields, studio.get());
    if (!fields.isStillGood()) {
      return Optional.empty();
    }
    return Optional.of(
        new LoadRequest(studio.get(), batches, firing.orElseThrow(), asked, day, seed, steps));
  }

  private static List<Batch> batches(FieldReader fields, Studio studio) {
    BatchListCheck check = new BatchListCheck(fields.problems());
    for (Batch batch : fields.objects("batches", inner -> BatchFormat.read(inner, studio))) {
      check.add(batch, fields.madeAt().pathOf(batch));
    }
    return check.kept();
  }

  static void writeShort(LoadRequest request, FieldWriter fields) {
    fields
        .object("firing", request.firing(), FiringFormat::write)
        .text("columnPlanAsked", request.columnPlanId())
        .text("day", request.day().map(LocalDate::toString))
        .whole("seed", request.seed())
        .whole("steps", request.steps());
  }

  static void writeLong(LoadRequest request, FieldWriter fields) {
    fields
        .objects("batches", request.batches(), BatchFormat::write)
        .object("studio", request.studio(), StudioFormat::write);
  }
}
